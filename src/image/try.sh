#!/usr/bin/env bash
# Tries the image as somebody without Java would: unpacked in another place, nothing on the path, no home.
#
#   src/image/try.sh JAR     makes the image from this jar first
set -euo pipefail
cd "$(dirname "${BASH_SOURCE[0]}")/../.."
case $1 in
    /*) jar=$1 ;;
    *) jar=$PWD/$1 ;;
esac
bash src/image.sh "$jar"

failed() { echo "image: $*" >&2; exit 1; }

place=$(mktemp -d)/'a folder'
trap 'rm -rf "${place%/*}"' EXIT
mkdir "$place"
tar -C "$place" -xzf target/image/shaftwright-*-"$(uname -s | tr '[:upper:]' '[:lower:]')-$(uname -m)".tar.gz
home=$place/shaftwright
alone() { env -i "$home/bin/shaftwright" "$@"; }

[ "$(du -sm "$home" | cut -f1)" -le 140 ] || failed "more than 140 MB unpacked"

alone --version | grep -q '^shaftwright ' || failed "--version says nothing"
mkdir "$place/jar"
cp workbooks/forest-special-inch.xlsx "$place/demo.xlsx"
cp workbooks/forest-special-inch.xlsx "$place/jar/demo.xlsx"
change='hub_shift[A]=1/2'
(cd "$place" && alone fill --set "$change" demo.xlsx >said 2>/dev/null) || failed "a fill ended with $?"
(cd "$place/jar" && java -jar "$jar" fill --set "$change" demo.xlsx >said 2>/dev/null)
diff "$place/said" "$place/jar/said" || failed "a fill says something else than the jar by itself"
cmp "$place/demo.xlsx" "$place/jar/demo.xlsx" || failed "a fill writes another file than the jar by itself"

code=0
alone fill "$place/missing.xlsx" 2>/dev/null || code=$?
[ "$code" -eq 3 ] || failed "a missing workbook ends with $code, not 3"

# With an archive that does not count, this Java refuses to start.
mkdir "$place/user"
home_of_user() { env -i HOME="$place/user" PATH=/usr/bin:/bin "$home/bin/shaftwright" "$@"; }
archive=(-Xshare:on "-XX:SharedArchiveFile=$home/lib/shaftwright.jsa")
if [ -f "$home/lib/shaftwright.aot" ]; then
    archive=(-XX:AOTMode=on "-XX:AOTCache=$home/lib/shaftwright.aot")
elif grep -q ' no$' "$home/lib/build"; then
    home_of_user --version >/dev/null
    made=$(find "$place/user" -name '*.jsa')
    archive=(-Xshare:on "-XX:SharedArchiveFile=$made")
    [ -n "$made" ] || failed "the first start in another place made no archive of classes"
fi
"$home/runtime/bin/java" "${archive[@]}" -XX:TieredStopAtLevel=1 -XX:+UseSerialGC \
    -jar "$home/lib/shaftwright.jar" --version >/dev/null || failed "the archive of classes does not count in another place"

# The menu starts it wherever it lies.
env -i HOME="$place/user" PATH=/usr/bin:/bin sh "$home/add-to-menu.sh" >/dev/null
entry=$place/user/.local/share/applications/shaftwright.desktop
if command -v desktop-file-validate >/dev/null; then
    desktop-file-validate "$entry" || failed "the entry in the menu is not valid"
fi
grep -qxF "Exec=\"$home/bin/shaftwright\" %F" "$entry" || failed "the entry in the menu leads elsewhere"

echo "image: tried in another place, without a path and without a home"
