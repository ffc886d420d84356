# Read by other scripts with `.`: installs what is missing of the lists of packages beside this file.
# Where nothing is missing nothing is asked of the network, so a second run is quick.

say() { printf '%s\n' "$*"; }

# The names in list files: what follows a # is a comment.
names_in() { sed 's/#.*//' "$@" | tr -s ' \t\n' '\n' | sed '/^$/d'; }

missing_of() {
  dpkg-query -W -f='${db:Status-Abbrev}${Package}\n' "$@" 2>/dev/null | sed -n 's/^ii //p' |
    sort -u >"$packages_here"
  printf '%s\n' "$@" | sort -u | comm -23 - "$packages_here"
}

# apt-get as root: by itself, or through sudo, which may ask for a password where there is a terminal.
apt_get() {
  how=
  if [ "$(id -u)" != 0 ]; then
    how=sudo
    [ -t 0 ] || how='sudo -n'
  fi
  # shellcheck disable=SC2086 # the words of `sudo -n` are two
  $how env DEBIAN_FRONTEND=noninteractive apt-get -q -o DPkg::Lock::Timeout=300 \
    -o Dpkg::Use-Pty=0 "$@" </dev/null
}

# need_packages LIST…: the packages of these list files are there afterwards, or the script has ended
# with the reason.
need_packages() {
  if ! command -v apt-get >/dev/null || ! command -v dpkg-query >/dev/null; then
    say "This script installs what it needs with apt-get, and there is none here: it is made for Debian 12."
    say "The packages that it would install are listed in: $*"
    exit 1
  fi
  packages_here=$(mktemp)
  # shellcheck disable=SC2046 # the names are meant to be words
  missing=$(missing_of $(names_in "$@"))
  rm -f "$packages_here"
  [ -n "$missing" ] || return 0

  # shellcheck disable=SC2086 # the names are meant to be words
  set -- $missing
  say "Installing with apt-get, and what they need in turn: $*"
  if [ "$(id -u)" != 0 ] && ! command -v sudo >/dev/null; then
    say "Only root may install packages, and there is no sudo here. Run this script as root, or have root run:"
    say "  apt-get install --no-install-recommends $*"
    exit 1
  fi
  # Lists that cannot be fetched now may still be there from before.
  apt_get update || say "The lists of packages could not be fetched; trying with those from before."
  if ! apt_get install -y --no-install-recommends "$@"; then
    say "The packages could not be installed. What apt-get says above is the reason; once it is out of the way,"
    say "run this script again. It goes on where it stopped."
    exit 1
  fi
}
