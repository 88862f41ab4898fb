#!/bin/sh
# Drives the bench as a person's program would: commands in, answers out, serial lines through the pseudo-terminal.
#   test_bench.sh BUILD-FOLDER
set -eu
build=$1
folder=$(mktemp -d)
bench=
trap 'test -z "$bench" || kill "$bench" 2>/dev/null; rm -rf "$folder"' EXIT

fail() {
    echo "FAILED: $*"
    exit 1
}

cat > "$folder/wiring" <<'END'
pin F4 row       # one key, its stripe towards the row
pin B0 column
switch Q column inside
diode inside row
END
mkfifo "$folder/in" "$folder/out"
"$build/bench" "$build/simulated.elf" --wiring "$folder/wiring" --link "$folder/tty" < "$folder/in" > "$folder/out" &
bench=$!
exec 3> "$folder/in" 4< "$folder/out"

# answer COMMAND PATTERN: what the bench says to a command.
answer() {
    if test -n "$1"; then echo "$1" >&3; fi
    read -r line <&4 || fail "the bench ended at: $1"
    case $line in $2) ;; *) fail "to '$1' it said '$line', not '$2'" ;; esac
}

# hear PATTERN: the next serial line but beats. The sketch may have greeted before or after we listened.
hear() {
    while read -r line <&5; do
        case $line in beat*) continue ;; esac
        case $1,$line in iam*) ;; *,iam*) continue ;; esac
        case $line in $1) return 0 ;; *) fail "the sketch said '$line', not '$1'" ;; esac
    done
    fail "the sketch said nothing, not '$1'"
}

answer '' 'ok ready'
exec 5<> "$folder/tty"
answer 'wait 100' 'ok'
printf 'who 1*318D\n' >&5
hear 'iam 1 0.1.0 ATmega32U4 24 16000000\*AD16'
printf 'add F4 B0*37C9\n' >&5
hear 'ok add 2\*????'
printf 'go*0FF4\n' >&5
hear 'ok go 2\*????'
hear 'full 0 * 0\*????'
answer 'press Q' 'ok'
hear '+ 1 * 0 1\*????'
answer 'release Q' 'ok'
hear '- 2 * 0 1\*????'
answer 'tap Q 20' 'ok'
hear '+ 3 * 0 1\*????'
hear '- 4 * 0 1\*????'
answer 'bounce Q 3 4000' 'ok'
for seq in 5 7 9; do
    hear "+ $seq * 0 1\*????"
    hear "- $((seq + 1)) * 0 1\*????"
done
answer 'press nobody' 'error no key nobody'
answer 'tap nobody 5' 'error no key nobody'
answer 'dance' 'error no such command*'

printf 'pin F4 row\npin B0 column\nswitch Q column row\n' > "$folder/bypassed"
printf 'pin F4 row\npin B0 row\npin Q9 row\n' > "$folder/wrong"
answer "load $folder/wrong" "error $folder/wrong:3: \"Q9\" is no pin; pins are named like F4"
printf 'pin F4 row\nrise F4 soon\n' > "$folder/timeless"
answer "load $folder/timeless" "error $folder/timeless:2: \"soon\" is no time in microseconds up to a second"
answer "load $folder/absent" "error $folder/absent: cannot be read"
answer "load $folder/bypassed" 'ok'
answer 'press Q' 'ok'
hear '+ 11 * ? ?\*????'
hear '+ 12 * ? ?\*????'

printf 'pin F4 row\nspare B0 lead\njoint R1 Q row\nswitch Q column row\n' > "$folder/led"
answer 'touch R1 Q' 'error no joint R1 Q, or no spare pin'
answer "load $folder/led" 'ok'
hear '- 13 * ? ?\*????'
hear '- 14 * ? ?\*????'
answer 'touch R1 W' 'error no joint R1 W, or no spare pin'
answer 'touch R1 Q' 'ok'
hear '+ 15 * ? ?\*????'
hear '+ 16 * ? ?\*????'
answer 'lift' 'ok'
hear '- 17 * ? ?\*????'
hear '- 18 * ? ?\*????'

exec 5>&-
answer 'unplug' 'ok'
test ! -e "$folder/tty" || fail "the link outlives the unplugging"
answer 'unplug' 'error unplugged already'
answer 'release Q' 'ok'
answer 'wait 100' 'ok'
answer 'replug' 'ok'
exec 5<> "$folder/tty"
answer 'wait 20' 'ok'
answer 'reset' 'ok'
hear 'iam 1 0.1.0 ATmega32U4 24 16000000\*AD16'
answer 'stats' 'ok noticed 18 told 18 cut 0 in * out * vanished * refused 0 cycles * sweeps * slowest *'

printf 'add F4 B0*37C9\ngo*0FF4\n' >&5
hear 'ok add 2\*????'
hear 'ok go 2\*????'
hear 'full 0 * 0\*????'
answer 'cut 3' 'ok'
answer 'press Q' 'ok'
# Whichever comes first, a change or a beat, ends after three bytes, and then the device does.
cat <&5 > "$folder/heard" 2> "$folder/ended" || true
half=$(tail -n 1 "$folder/heard")
case $half in '+ 1' | bea) ;; *) fail "the line was not cut after three bytes: '$half'" ;; esac
answer 'wait 1' 'ok'
test ! -e "$folder/tty" || fail "the link outlives the cut"
exec 5>&-
answer 'stats' 'ok noticed * told 18 cut 1 *'

exec 3>&-
wait "$bench" || fail "the bench ended with status $?"
bench=
test ! -e "$folder/tty" || fail "the link outlives the bench"
status=0
"$build/bench" "$build/simulated.elf" --wiring "$folder/wrong" --link "$folder/tty" < /dev/null 2> "$folder/said" || status=$?
test $status = 2 || fail "a wrong wiring file gave status $status"
grep -q 'wrong:3: "Q9" is no pin' "$folder/said" || fail "a wrong wiring file is not named"
echo 'all good'
