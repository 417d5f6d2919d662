#!/usr/bin/env bash
# Runs every test, those in LibreOffice, Gnumeric and Node.js included. Needs a JDK 17 or newer and Maven.
# On Debian as root what else is missing is installed; anywhere else it is named. npm packages go to target/node.
set -euo pipefail
cd "$(dirname "${BASH_SOURCE[0]}")/.."

packages=(xvfb xauth libreoffice-calc-nogui libreoffice-java-common python3-uno python3-openpyxl gnumeric poppler-utils fonts-liberation)

have() { command -v "$1" >/dev/null 2>&1; }

# Node.js 18 or newer with npm, wherever it came from.
have_node() { have npm && have node && [ "$(node -p 'process.versions.node.split(".")[0]')" -ge 18 ]; }

for program in java mvn; do
    have "$program" || { echo "verify: $program is missing; install a JDK 17 or newer and Maven" >&2; exit 1; }
done

missing=()
if have dpkg-query; then
    for package in "${packages[@]}"; do
        dpkg-query -W -f='${Status}' "$package" 2>/dev/null | grep -q 'ok installed' || missing+=("$package")
    done
    # The full package brings what the one without windows does.
    if have soffice && dpkg-query -W -f='${Status}' libreoffice-calc 2>/dev/null | grep -q 'ok installed'; then
        missing=("${missing[@]/libreoffice-calc-nogui/}")
    fi
    read -r -a missing <<<"${missing[*]-}"
    have_node || missing+=(nodejs npm)
else
    have soffice || missing+=(LibreOffice)
    have ssconvert || missing+=(Gnumeric)
    have pdftotext || missing+=("pdftotext of Poppler")
    have xvfb-run || missing+=(Xvfb)
    /usr/bin/python3 -c 'import openpyxl' 2>/dev/null || missing+=("openpyxl for /usr/bin/python3")
    have_node || missing+=("Node.js 18 or newer with npm")
fi

if [ "${#missing[@]}" -gt 0 ]; then
    if have apt-get && [ "$(id -u)" -eq 0 ]; then
        echo "verify: installing ${missing[*]}" >&2
        export DEBIAN_FRONTEND=noninteractive
        apt-get update -q
        apt-get install -q -y --no-install-recommends "${missing[@]}"
    else
        echo "verify: missing: ${missing[*]}; install them and run this again" >&2
        exit 1
    fi
fi

have_node || { echo "verify: Node.js is older than 18; install a newer one and run this again" >&2; exit 1; }
# npm writes that file last.
if [ ! target/node/node_modules/.package-lock.json -nt src/office/node/package-lock.json ]; then
    mkdir -p target/node
    cp src/office/node/package.json src/office/node/package-lock.json target/node/
    npm ci --prefix target/node --no-audit --no-fund --loglevel=error
fi

# The window's tests need a screen, though nobody looks at it.
xvfb-run -a mvn -B -P office verify
bash src/image/try.sh target/shaftwright.jar
