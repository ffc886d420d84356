# Read by tests/all with `.`: running things and counting what passed and failed.

passed=0
failed=0

headed() { printf '\n== %s ==\n' "$*"; }

failed_once() {
  failed=$((failed + 1))
  say "not ok $*"
}

# check_that WHAT COMMAND…: one thing that holds or does not; what the command says is shown if not.
check_that() {
  what=$1
  shift
  if "$@" >"$work/check" 2>&1; then
    passed=$((passed + 1))
    say "ok $what"
  else
    tail -n 200 "$work/check"
    failed_once "$what"
  fi
}

# Every program of tests and every script of tests, with the program in FOLDER, as many at once as
# there are processors. A program that crashes, hangs or says nothing fails once, however much had
# passed before. `run_suite FOLDER scripts` leaves the programs out.
run_suite() {
  rm -rf "$work/told"
  mkdir "$work/told"
  {
    for list in tests/*/CMakeLists.txt; do
      [ "${2:-}" != scripts ] || continue
      room=${list%/CMakeLists.txt}
      room=${room#tests/}
      case $room in fuzz | bench) continue ;; esac
      say "$1/tests/$room/test_$room"
    done
    ls tests/*/*.test
  } >"$work/suite"
  xargs -P "$(nproc)" -n 1 sh tests/.one.sh "$top" "$1" "$work" <"$work/suite"
  for one in $(cat "$work/suite"); do
    counted=$work/told/$(basename "$one").count
    if [ -s "$counted" ]; then
      read -r good bad <"$counted"
      passed=$((passed + good))
      failed=$((failed + bad))
    else
      failed_once "$one (was not counted)"
    fi
  done
}

# Sanitizers end a program at the first mistake. Caches that libraries keep until the end are no leaks
# of ours.
sanitized() {
  ASAN_OPTIONS=detect_leaks=1:allocator_may_return_null=1
  LSAN_OPTIONS=suppressions=$top/tests/.leaks:print_suppressions=0
  UBSAN_OPTIONS=print_stacktrace=1:halt_on_error=1
  BODKIN_SANITIZED=1
  export ASAN_OPTIONS LSAN_OPTIONS UBSAN_OPTIONS BODKIN_SANITIZED
  "$@"
  unset ASAN_OPTIONS LSAN_OPTIONS UBSAN_OPTIONS BODKIN_SANITIZED
}

fuzz_wanted() { if [ -f tests/fuzz/CMakeLists.txt ]; then say ON; else say OFF; fi; }

# Seeds are read only; what a fuzz program finds goes to the work folder and its report is shown.
run_fuzzers() {
  for program in "$1"/tests/fuzz/fuzz_*; do
    case $program in *.*|*"*") continue ;; esac
    name=${program##*/fuzz_}
    seeds=tests/fuzz/seeds/$name
    mkdir -p "$work/corpus-$name"
    if [ ! -d "$seeds" ]; then
      failed_once "$program has no seeds in $seeds"
      continue
    fi
    check_that "fuzz_$name runs ${BODKIN_FUZZ_SECONDS:-20} seconds from its seeds without a mistake" \
      "$program" -max_total_time="${BODKIN_FUZZ_SECONDS:-20}" -timeout=25 -rss_limit_mb=3000 \
      -artifact_prefix="$work/" "$work/corpus-$name" "$seeds"
  done
}

sources() { find compiler tests examples -name '*.cpp' -o -name '*.hpp' | LC_ALL=C sort; }

clean_layout() { sources | xargs clang-format --dry-run -Werror; }

# The sources of the compiler that the newest commits changed, as far as a shallow clone knows them.
newly_changed() {
  base=$(git rev-list --max-count=8 HEAD 2>/dev/null | tail -n 1)
  [ -n "$base" ] || return 0
  git diff --name-only --diff-filter=d "$base" HEAD -- 'compiler/*.cpp' | head -n 60
}

# tidied FOLDER [OPTION…]: the sources named on standard input. The counts of warnings in system
# headers, which are not shown, say nothing.
tidied() {
  folder=$1
  shift
  status=0
  LC_ALL=C sort | xargs -r -P "$(nproc)" -n 4 clang-tidy -p "$folder" --quiet "$@" \
    >"$work/tidy" 2>&1 || status=$?
  grep -v ' warnings\{0,1\} generated\.$' "$work/tidy"
  return "$status"
}

clean_tidy() { find compiler -name '*.cpp' | tidied "$1"; }
# The analyzer that follows every path takes half of the time.
clean_new_tidy() { newly_changed | tidied "$1" '--checks=-clang-analyzer-*'; }
