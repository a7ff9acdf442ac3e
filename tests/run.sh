#!/usr/bin/env bash
# Builds everything and runs the tests.
#
#   bash tests/run.sh          the quick lane
#   bash tests/run.sh --all    the slow lane too
#
# Ends with the test driver's own summary and its exit status.
set -euo pipefail

root="$(cd "$(dirname "${BASH_SOURCE[0]}")/.." && pwd)"
# shellcheck source=cli/packages.sh
source "$root/cli/packages.sh"

lane='^quick$'
case "${1:-}" in
  '') ;;
  --all) lane='^(quick|slow)$' ;;
  *)
    echo "usage: bash tests/run.sh [--all]" >&2
    exit 2
    ;;
esac

install_missing "${visewright_build_packages[@]}" "${visewright_test_packages[@]}"
cd "$root"
cmake --preset release -DVISEWRIGHT_TESTS=ON
cmake --build --preset release

# How many tests carry a label, and those without either: a lane that leaves something out says so.
in_lane() { ctest --test-dir build -N "$@" | sed -n 's/^Total Tests: //p'; }
echo
echo "Quick lane: $(in_lane -L '^quick$') tests. Slow lane: $(in_lane -L '^slow$') tests."
echo "In neither lane: $(in_lane -LE '^(quick|slow)$') tests; benchmarks and fuzzing are not run from here."
if [[ "$lane" == '^quick$' ]]; then
  echo "Left out now, the slow lane:"
  ctest --test-dir build -N -L '^slow$' | sed -n 's/^ *Test *#[0-9]*: /  /p'
else
  echo "Left out now: nothing of the two lanes."
fi
echo
exec ctest --test-dir build -L "$lane" -j 2 --output-on-failure --no-tests=error
