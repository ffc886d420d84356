# Read by other scripts with `.`, from the top folder: configuring and building, with progress.

# configure FOLDER [OPTION…]: makes or renews the build folder. One that was copied from another
# place is begun afresh, for its paths lead there.
configure() {
  folder=$1
  shift
  fresh=
  if [ -f "$folder/CMakeCache.txt" ] &&
    ! grep -qxF "CMAKE_HOME_DIRECTORY:INTERNAL=$(pwd -P)" "$folder/CMakeCache.txt"; then
    fresh=--fresh
  fi
  if ! cmake -S . -B "$folder" -G Ninja $fresh "$@" >"$folder.log" 2>&1; then
    cat "$folder.log"
    rm -f "$folder.log"
    say "The build could not be set up; the reason stands above."
    return 1
  fi
  rm -f "$folder.log"
}

# build_targets FOLDER TARGET…: on a terminal one line that counts up, else a line for each step.
build_targets() {
  folder=$1
  shift
  NINJA_STATUS='[%f of %t] ' ninja -C "$folder" "$@" || {
    say "The build stopped; the reason stands above."
    return 1
  }
}

# fact_of KEY FILE: the first value of a key in a JSON file, without its quotes.
fact_of() {
  tr '{,' '\n\n' <"$2" | sed -n "s/^ *\"$1\": *\"\{0,1\}\([^\"}]*\).*/\1/p" | head -n 1
}
