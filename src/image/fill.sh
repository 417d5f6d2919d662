#!/bin/sh
# Fills the workbooks that are dropped on it, with the Java of this system; without one it opens the window.
here=$(CDPATH= cd -- "${0%/*}" && pwd)
if ! command -v java >/dev/null 2>&1; then
    echo "Shaftwright needs Java 17 or newer; this system has none." >&2
    exit 5
fi
[ $# -gt 0 ] || exec java -jar "$here/shaftwright.jar"
code=0
for workbook in "$@"; do
    java -jar "$here/shaftwright.jar" fill "$workbook" || code=$?
done
# Whoever dropped a file wants to read what was said.
if [ -t 0 ]; then
    printf 'Press Enter to close. '
    read -r _
fi
exit $code
