#!/usr/bin/env bash
# Makes the README's pictures from the demo workbook: LibreOffice prints it, pdftoppm draws the pages.
# Needs LibreOffice, poppler-utils and ImageMagick.
set -euo pipefail
cd "$(dirname "${BASH_SOURCE[0]}")/.."

work=$(mktemp -d)
trap 'rm -rf "$work"' EXIT
soffice "-env:UserInstallation=file://$work/profile" --headless --convert-to pdf --outdir "$work" workbooks/forest-special-inch.xlsx >/dev/null
mkdir -p workbooks/pictures

# picture NAME TEXT-ON-PAGE [CROP]: the first page that holds the text
picture() {
    local name=$1 text=$2 crop=${3:-} page
    for ((page = 1; page < 60; page++)); do
        if [[ $(pdftotext -f "$page" -l "$page" "$work/forest-special-inch.pdf" - 2>/dev/null) == *"$text"* ]]; then
            break
        fi
    done
    pdftoppm -r 90 -f "$page" -l "$page" -png -singlefile "$work/forest-special-inch.pdf" "$work/$name"
    convert "$work/$name.png" -trim +repage -bordercolor white -border 8 ${crop:+-gravity northwest -crop "$crop" +repage} \
        +dither -colors 16 -strip -define png:compression-level=9 "workbooks/pictures/$name.png"
}

picture start "Order of work"
picture measure "Left side"
picture scenarios "Tyre, wheel and track"
picture charts "Charts, left side" 100%x62%+0+0
picture card "Shop card, left shaft"
picture joint "What the table of joints asks for" 400x139+0+237
ls -l workbooks/pictures
