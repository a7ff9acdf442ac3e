#!/usr/bin/env bash
# Builds the program and makes one preset into a folder.
#
#   bash cli/demo.sh [PRESET] [DIR]
#
# PRESET: one of `visewright catalogue presets`, small-instrument-bench when left out. DIR: vise-PRESET in the current folder when
# left out; a number is added when the name is taken. Ends with the exit status of `visewright make`.
set -euo pipefail

root="$(cd "$(dirname "${BASH_SOURCE[0]}")/.." && pwd)"
# shellcheck source=cli/packages.sh
source "$root/cli/packages.sh"

install_missing "${visewright_build_packages[@]}"
(
  cd "$root"
  cmake --preset release -DVISEWRIGHT_TESTS=OFF
  cmake --build --preset release --target visewright
) >&2
program="$root/build/visewright"

preset="${1:-small-instrument-bench}"
wanted="${2:-vise-$preset}"
wanted="${wanted%/}"
folder="$wanted"
for ((number = 2; ; ++number)); do
  [[ -e "$folder" || -L "$folder" || -e "$folder.toml" || -L "$folder.toml" ]] || break
  folder="$wanted-$number"
done

"$program" start "$preset" -o "$folder.toml" > /dev/null
status=0
"$program" make "$folder.toml" -o "$folder" || status=$?
if [[ ! -d "$folder" ]]; then exit "$status"; fi

echo
echo "Design: $folder.toml"
echo "Folder: $folder"
(cd "$folder" && find . -type f -printf '%P\t%s bytes\n' | LC_ALL=C sort | sed 's/^/  /' | expand -t 56)
exit "$status"
