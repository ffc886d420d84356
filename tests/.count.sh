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

# Every program of tests and every script of tests, with the program in FOLDER.
run_suite() {
  for list in tests/*/CMakeLists.txt; do
    room=${list%/CMakeLists.txt}
    room=${room#tests/}
    case $room in fuzz | bench) continue ;; esac
    run_program "$1/tests/$room/test_$room"
  done
  for script in tests/*/*.test; do
    [ ! -f "$script" ] || run_script "$1" "$script"
  done
}

# A program that crashes, hangs or says nothing fails once, however much had passed before.
run_program() {
  status=0
  timeout -k 10 900 "$1" --no-colors=true >"$work/out" 2>&1 </dev/null || status=$?
  cases=$(sed -n 's/^\[doctest\] test cases: *[0-9]* *| *\([0-9]*\) passed *| *\([0-9]*\) failed.*/\1 \2/p' \
    "$work/out" | tail -n 1)
  good=${cases% *}
  bad=${cases#* }
  if [ -z "$cases" ] || { [ "$status" != 0 ] && [ "$bad" = 0 ]; }; then
    tail -n 200 "$work/out"
    failed_once "$1 (ended with status $status)"
    return
  fi
  [ "$bad" = 0 ] || cat "$work/out"
  passed=$((passed + good))
  failed=$((failed + bad))
  say "$1: $good passed, $bad failed"
}

# A script that ends badly without a `not ok`, or says nothing at all, fails once more.
run_script() {
  status=0
  rm -rf "$work/scratch"
  mkdir "$work/scratch"
  BODKIN="$top/$1/bodkin" SCRATCH="$work/scratch" timeout -k 10 900 sh "$2" >"$work/out" 2>&1 \
    </dev/null || status=$?
  good=$(grep -c '^ok ' "$work/out")
  bad=$(grep -c '^not ok ' "$work/out")
  if [ "$bad" = 0 ] && { [ "$status" != 0 ] || [ "$good" = 0 ]; }; then
    say "not ok $2 (ended with status $status)" >>"$work/out"
    bad=1
  fi
  [ "$bad" = 0 ] || cat "$work/out"
  passed=$((passed + good))
  failed=$((failed + bad))
  say "$2: $good passed, $bad failed"
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

# The counts of warnings in system headers, which are not shown, say nothing.
clean_tidy() {
  status=0
  find compiler -name '*.cpp' | LC_ALL=C sort |
    xargs -P "$(nproc)" -n 4 clang-tidy -p "$1" --quiet >"$work/tidy" 2>&1 || status=$?
  grep -v ' warnings\{0,1\} generated\.$' "$work/tidy"
  return "$status"
}
