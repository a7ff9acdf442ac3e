# shellcheck shell=bash disable=SC2034
# What the program needs from Debian 12, and putting it there. Sourced by cli/demo.sh and tests/run.sh.

visewright_build_packages=(
  cmake g++ ninja-build pkg-config ccache
  libocct-foundation-dev libocct-modeling-data-dev libocct-modeling-algorithms-dev libocct-data-exchange-dev
  libocct-ocaf-dev libocct-visualization-dev libtbb-dev libfontconfig-dev
  libcli11-dev libspdlog-dev libfmt-dev libtomlplusplus-dev nlohmann-json3-dev libexpected-dev libssl-dev
  libcairo2-dev libpugixml-dev libpolyclipping-dev fonts-dejavu-core
)
visewright_test_packages=(libgtest-dev libgmock-dev libbenchmark-dev python3 python3-jsonschema
  poppler-utils python3-ezdxf librsvg2-bin libxml2-utils admesh)

# install_missing PACKAGE…: installs what dpkg does not know as installed; needs no network when all is there.
install_missing() {
  local package missing=() as_root=()
  if ! command -v dpkg-query > /dev/null; then
    echo "This is no Debian system; going on in the hope that what these packages hold is there: $*" >&2
    return 0
  fi
  for package in "$@"; do
    [[ "$(dpkg-query -W -f='${db:Status-Status}' "$package" 2> /dev/null)" == installed ]] || missing+=("$package")
  done
  if ((${#missing[@]} == 0)); then return 0; fi
  if ((EUID != 0)); then
    if ! command -v sudo > /dev/null; then
      echo "Missing, and only root can install: ${missing[*]}" >&2
      return 1
    fi
    as_root=(sudo)
  fi
  echo "Installing ${missing[*]}" >&2
  "${as_root[@]}" env DEBIAN_FRONTEND=noninteractive apt-get update -q >&2
  "${as_root[@]}" env DEBIAN_FRONTEND=noninteractive apt-get install -q -y --no-install-recommends "${missing[@]}" >&2
}
