# Read with `.` by the scripts beside it: a small edition to put things into, and what to ask of it.

say() { if [ "$1" = 0 ]; then echo "ok $2"; else echo "not ok $2"; fi; }

# begin FILE [LINE…]: a manuscript of four half-letter pages on one letter sheet, the lines being
# facts of its edition; what a test asks about is added below it.
begin() {
  file=$1
  shift
  cat >"$file" <<'END'
stock plain
  weight 20 lb bond
  sheet letter, grain short
  costs $10 per 500 sheets

machine copier
  prints black at $0.10 a side
  prints colour at $0.50 a side
  bare 1/4in
  duplex by machine

face book from "EB Garamond"

style body
  face book 10/12

edition "Test"
  size half-letter
  run 10 copies
  paper plain
  machine copier
END
  for line in "$@"; do printf '  %s\n' "$line" >>"$file"; done
  echo >>"$file"
}

# The program within 800 MB of addresses, libraries and all; sanitizers map terabytes. The minute is
# no measure of speed: it ends what would go on forever.
bounded() {
  (
    [ -n "${BODKIN_SANITIZED:-}" ] || ulimit -v 800000
    exec timeout 60 "$BODKIN" "$@"
  )
}

# No crash, no half of an output: a folder of outputs holds no sheets, and nothing lies beside it.
no_sheets() { [ ! -e "$1/sheets.pdf" ] && [ ! -e "$1/passes" ] && ! ls -d "$1"/../.*.making* >/dev/null 2>&1; }

# refused NAME CHECK: $SCRATCH/NAME.bodkin ends with 1 and this problem among those told.
refused() {
  bounded compile "$SCRATCH/$1.bodkin" >"$SCRATCH/out" 2>&1
  status=$?
  [ "$status" = 1 ] && grep -q "\[$2\]" "$SCRATCH/out" && no_sheets "$SCRATCH/$1" && return
  echo "ended with $status; asked for [$2]"
  head -c 2000 "$SCRATCH/out"
  echo # what follows begins a line of its own
  return 1
}
