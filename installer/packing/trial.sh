#!/bin/sh
# A Debian package tried in a clean root: installed, used, upgraded, removed. Needs root, debootstrap
# and Debian's registry.
#
#     sh installer/packing/trial.sh PACKAGE.deb ROOT
#
# ROOT is made where it is not there yet. Says "Trial passed." at the end, or stops at what failed.
set -eu

package=$(realpath "$1")
root=$2
release=${RELEASE:-bookworm}

step() { printf '== %s\n' "$*"; }
inside() { chroot "$root" env -i PATH=/usr/sbin:/usr/bin:/sbin:/bin LANG=C.UTF-8 \
    DEBIAN_FRONTEND=noninteractive "$@"; }
teacher() { inside su teacher -s /bin/sh -c "cd; QT_QPA_PLATFORM=offscreen $*"; }

if [ ! -x "$root/usr/bin/apt-get" ]; then
    command -v debootstrap >/dev/null || { echo "Install debootstrap first."; exit 2; }
    step "a clean root"
    debootstrap --variant=minbase "$release" "$root"
fi
cp /etc/resolv.conf "$root/etc/resolv.conf"
[ -e "$root/proc/self" ] || mount -t proc proc "$root/proc"
trap 'umount "$root/proc" 2>/dev/null || true' EXIT

step "install"
cp "$package" "$root/tmp/pluckwright.deb"
inside apt-get update -q
# What a desktop has that tells kinds of files and who opens them.
inside apt-get install -y -q --no-install-recommends shared-mime-info desktop-file-utils
inside apt-get purge -y -q pluckwright >/dev/null 2>&1 || true  # of a trial that was stopped
inside apt-get install -y -q --no-install-recommends /tmp/pluckwright.deb
inside sh -c '! command -v python3' || echo "(this root has a Python of its own)"
inside id teacher >/dev/null 2>&1 || inside useradd -m teacher

step "kinds of files, and the icon"
opens() { grep -q "^$1=.*pluckwright.desktop" "$root/usr/share/applications/mimeinfo.cache"; }
for kind in $(sed -n 's/.*<mime-type type="\([^"]*\)".*/\1/p' "$(dirname "$0")/pluckwright.xml"); do
    opens "$kind" || { echo "The desktop does not know that $kind is opened."; exit 1; }
done
grep -q ':application/x-pluckwright:\*.pluckwright' "$root/usr/share/mime/globs2"
inside desktop-file-validate /usr/share/applications/pluckwright.desktop
icon=$(sed -n 's/^Icon=//p' "$root/usr/share/applications/pluckwright.desktop")
for size in 48x48 256x256 scalable; do
    ls "$root/usr/share/icons/hicolor/$size/apps/$icon".* >/dev/null
done

step "the verbs"
teacher pluckwright --version
teacher "pluckwright finger demo --json" | grep -q '"optimal": *true'
teacher "pluckwright handout demo -o page.pdf && head -c 5 page.pdf" | grep -q '%PDF-'
teacher "pluckwright sound demo -o heard.wav && head -c 4 heard.wav" | grep -q RIFF
teacher "pluckwright export demo -o score.musicxml && pluckwright read score.musicxml" >/dev/null
teacher "mkdir -p scores && cp score.musicxml scores/ && pluckwright batch scores -o pages"

step "the window"
teacher "timeout -s KILL ${SECONDS_OPEN:-60} pluckwright" || true
lessons=$(teacher "pluckwright lessons --json" | grep -c '"id"')
[ "$lessons" -gt 0 ] || { echo "The window laid out no demo shelf."; exit 1; }
teacher "pluckwright lessons --json" > "$root/tmp/before.json"

step "upgrade and removal leave the lessons"
inside apt-get install -y -q --reinstall /tmp/pluckwright.deb
teacher "pluckwright lessons --json" | cmp - "$root/tmp/before.json"
before=$(teacher 'sha256sum .local/share/pluckwright/*.db' | cut -d' ' -f1)
inside apt-get purge -y -q pluckwright
after=$(teacher 'sha256sum .local/share/pluckwright/*.db' | cut -d' ' -f1)
[ -n "$before" ] && [ "$before" = "$after" ] || { echo "Removal touched the lessons."; exit 1; }
! opens application/x-pluckwright || { echo "Removal left it among the programs."; exit 1; }
[ ! -e "$root/usr/bin/pluckwright" ] && [ ! -e "$root/usr/lib/pluckwright" ] \
    || { echo "Removal left files of the program."; exit 1; }
step "Trial passed."
