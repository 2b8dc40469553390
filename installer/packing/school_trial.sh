#!/bin/sh
# An installed program on a school's shared shelf: a PostgreSQL server is started for it alone, the
# window lays out the demo shelf there, two teachers list it, and what is wrong is said.
#
#     sh installer/packing/school_trial.sh PROGRAM
#
# Says "Trial passed." at the end, or stops at what failed. As root the server runs as nobody.
set -eu

program=$1
port=${PORT:-55437}
servers=$(ls -d /usr/lib/postgresql/*/bin 2>/dev/null | tail -n 1)
[ -x "$servers/initdb" ] || { echo "Install a PostgreSQL server first (apt install postgresql)."; exit 2; }
folder=$(mktemp -d)
[ "$(id -u)" != 0 ] || chown nobody "$folder"
step() { printf '== %s\n' "$*"; }
fail() { echo "$*"; exit 1; }
# One of the server's programs in place of the shell that calls it.
served() {
    name=$1
    shift
    cd "$folder"
    [ "$(id -u)" != 0 ] || exec setpriv --reuid=nobody --clear-groups "$servers/$name" "$@"
    exec "$servers/$name" "$@"
}
on() { printf 'postgresql://%s@127.0.0.1:%s/%s' "$1" "$port" "$2"; }

step "a server"
(served initdb -D data -U school -A trust -E UTF8 >/dev/null)
served postgres -D data -p "$port" -k "$folder" -h 127.0.0.1 >/dev/null 2>&1 &
server=$!
trap 'kill "$server" 2>/dev/null; wait "$server" 2>/dev/null; rm -rf "$folder"' EXIT
for _ in $(seq 100); do
    "$servers/psql" -q "$(on school postgres)" -c 'CREATE DATABASE lessons' 2>/dev/null && break
    sleep 0.2
done
export PLUCKWRIGHT_DB="$(on school lessons)" PLUCKWRIGHT_LOGS="$folder/logs" QT_QPA_PLATFORM=offscreen

step "the window, and two teachers"
"$program" lessons | grep -q 'No lessons yet'
timeout -s KILL "${SECONDS_OPEN:-60}" "$program" 2>/dev/null || true
count() { "$program" lessons --json | grep -c '"id"'; }
lessons=$(PLUCKWRIGHT_TEACHER=ada count) || fail "The window laid out no demo shelf."
[ "$lessons" = "$(PLUCKWRIGHT_TEACHER=jory count)" ] || fail "Two teachers see other lessons."

step "to a shelf of one's own"
"$program" archive "$folder/all.pluckwright" >/dev/null
PLUCKWRIGHT_DB="sqlite:///$folder/own.db"
"$program" archive "$folder/all.pluckwright" --merge >/dev/null
[ "$lessons" = "$(count)" ] || fail "Lessons were lost on the way."

step "what is wrong is said"
said() {
    PLUCKWRIGHT_DB=$1
    status=0
    "$program" lessons >"$folder/said" 2>&1 || status=$?
    [ "$status" = 2 ] && [ "$(wc -l <"$folder/said")" = 1 ] && grep -q "$2" "$folder/said" \
        || { cat "$folder/said"; fail "Not said: $2."; }
}
said "$(on school nowhere)" 'has no database'
said "$(on nobody lessons)" 'does not let this user in'
kill "$server"
wait "$server" 2>/dev/null || true
said "$(on school lessons)" 'cannot be reached'
step "Trial passed."
