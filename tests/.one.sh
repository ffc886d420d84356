# One program or script of tests: `sh tests/.one.sh TOP FOLDER WORK PATH`, for tests/all. What it
# printed is shown where something failed; how many passed and failed goes to WORK/told/.
top=$1 folder=$2 work=$3 path=$4
cd "$top" || exit 1
told=$work/told/$(basename "$path")
status=0

program() {
  timeout -k 10 900 "$path" --no-colors=true >"$told.out" 2>&1 </dev/null || status=$?
  cases=$(sed -n 's/^\[doctest\] test cases: *[0-9]* *| *\([0-9]*\) passed *| *\([0-9]*\) failed.*/\1 \2/p' \
    "$told.out" | tail -n 1)
  good=${cases% *}
  bad=${cases#* }
  if [ -z "$cases" ] || { [ "$status" != 0 ] && [ "$bad" = 0 ]; }; then
    printf 'not ok %s (ended with status %s)\n' "$path" "$status" >>"$told.out"
    good=0 bad=1
  fi
}

# A script that ends badly without a `not ok`, or says nothing at all, fails once more.
script() {
  mkdir "$told.scratch"
  BODKIN="$top/$folder/bodkin" SCRATCH="$told.scratch" timeout -k 10 900 sh "$path" \
    >"$told.out" 2>&1 </dev/null || status=$?
  rm -rf "$told.scratch"
  good=$(grep -c '^ok ' "$told.out")
  bad=$(grep -c '^not ok ' "$told.out")
  if [ "$bad" = 0 ] && { [ "$status" != 0 ] || [ "$good" = 0 ]; }; then
    printf 'not ok %s (ended with status %s)\n' "$path" "$status" >>"$told.out"
    bad=1
  fi
}

case $path in
*.test) script ;;
*) program ;;
esac
{
  [ "$bad" = 0 ] || tail -n 200 "$told.out"
  printf '%s: %s passed, %s failed\n' "$path" "$good" "$bad"
} >"$told.say"
cat "$told.say"
printf '%s %s\n' "$good" "$bad" >"$told.count"
