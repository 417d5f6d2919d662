#!/bin/sh
# Puts Shaftwright, where it lies now, into the menu of this user's desktop, and among the programs that open workbooks.
# Taken out again by: sh add-to-menu.sh --remove
set -eu

home=$(CDPATH= cd -- "$(dirname -- "$0")" && pwd -P)
menu=${XDG_DATA_HOME:-$HOME/.local/share}/applications
entry=$menu/shaftwright.desktop

if [ "${1:-}" = --remove ]; then
    rm -f "$entry"
    echo "Shaftwright is out of the menu."
    exit
fi

# Quoted as desktop entries want it: first for the argument, then for the value.
program=$(printf %s "$home/bin/shaftwright" | sed -e 's/[\\"`$]/\\&/g' -e 's/\\/\\\\/g' -e 's/%/%%/g')
mkdir -p "$menu"
cat >"$entry" <<EOF
[Desktop Entry]
Type=Application
Name=Shaftwright
Comment=Half-shaft sizing in your own workbook
Exec="$program" %F
Terminal=false
Categories=Office;
MimeType=application/vnd.openxmlformats-officedocument.spreadsheetml.sheet;application/vnd.ms-excel.sheet.macroEnabled.12;
EOF
echo "Shaftwright is in the menu: $entry"
