#!/bin/sh
# Tests ./twinbar as a stranger meets it: in a copy of the repository, in a folder with a blank.
set -eu
root=$(cd "$(dirname "$0")/../../../.." && pwd -P)
work=$(mktemp -d)
trap 'rm -rf "$work"' EXIT
copy="$work/a folder"
mkdir "$copy"
(cd "$root" && tar cf - --exclude=.git --exclude=.build --exclude=target .) | (cd "$copy" && tar xf -)

passed=0 failed=0
check() {
    if [ "$2" = "$3" ]; then
        passed=$((passed + 1))
    else
        failed=$((failed + 1))
        printf '%s\n  expected: %s\n  found:    %s\n' "$1" "$2" "$3" >&2
    fi
}
builds() { find "$copy/.build" -name twinbar.jar | wc -l | tr -d ' '; }
run() { "$copy/twinbar" "$@" 2>"$work/errors"; }

# ---- builds what is missing, and nothing twice ---------------------------------------------------

first=$(run --version)
check "tells its version" twinbar "$(printf %s "${first%% *}" | tr T t)"
check "says that it builds" 1 "$(grep -c '^Building Twinbar' "$work/errors")"
check "builds once" 1 "$(builds)"
check "leaves nothing half made" 0 "$(find "$copy/.build" -name 'part.*' | wc -l | tr -d ' ')"
check "gives back the lock" no "$([ -d "$copy/.build/lock" ] && echo yes || echo no)"

second=$(run --version)
check "answers the same again" "$first" "$second"
check "says nothing while it need not build" "" "$(cat "$work/errors")"

ln -s "$copy/twinbar" "$work/twinbar"
check "runs through a link" "$first" "$("$work/twinbar" --version)"
check "runs from another folder" "$first" "$(cd / && run --version)"
check "hands on arguments with blanks and the status" 2 \
    "$(run compare "no such file.csv" >/dev/null && echo 0 || echo $?)"
check "keeps the answer apart from its own words" 1 "$(run --version | wc -l | tr -d ' ')"

# ---- refuses what it cannot run on, in one sentence ----------------------------------------------

old="$work/old"
mkdir -p "$old/bin"
printf '#!/bin/sh\nexit 1\n' >"$old/bin/java"
chmod +x "$old/bin/java"
printf 'IMPLEMENTOR="N/A"\nJAVA_VERSION="11.0.2"\n' >"$old/release"
status=$(JAVA_HOME=$old run --version && echo 0 || echo $?)
check "refuses an old JDK" 2 "$status"
check "names what is needed and what was found" 1 "$(grep -c '17 or newer.*11\.0\.2' "$work/errors")"
check "in one line" 1 "$(wc -l <"$work/errors" | tr -d ' ')"

status=$(JAVA_HOME=$work/none run --version && echo 0 || echo $?)
check "refuses a JAVA_HOME without java" 2 "$status"

# ---- builds anew when sources change -------------------------------------------------------------

echo "A changed source." >>"$copy/NOTICE"
third=$(run --version)
check "runs what was built anew" "$first" "$third"
check "keeps the earlier build" 2 "$(builds)"

echo "class Broken {" >"$copy/core/src/main/java/Broken.java"
status=$(run --version >/dev/null && echo 0 || echo $?)
check "fails where the sources do not compile" 1 "$status"
check "says where the whole story is" 1 "$(grep -c 'build.log' "$work/errors")"
check "keeps no broken build" 2 "$(builds)"

echo "launcher: $passed passed, $failed failed"
[ "$failed" = 0 ]
