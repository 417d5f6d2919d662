#!/usr/bin/env bash
# Runs every test, those in LibreOffice and Gnumeric included. Needs a JDK 17 or newer and Maven.
# On Debian as root what else is missing is installed; anywhere else it is named.
set -euo pipefail
cd "$(dirname "${BASH_SOURCE[0]}")/.."

packages=(libreoffice-calc-nogui libreoffice-java-common python3-uno gnumeric fonts-liberation)

have() { command -v "$1" >/dev/null 2>&1; }

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
else
    have soffice || missing+=(LibreOffice)
    have ssconvert || missing+=(Gnumeric)
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

exec mvn -B -P office verify
