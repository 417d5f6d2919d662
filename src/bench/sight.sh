#!/usr/bin/env bash
# Starts a program and ends it as soon as its window is in sight.
#
#   src/bench/sight.sh TITLE PROGRAM     on the display of DISPLAY, where no other window has this title
set -uo pipefail
title=$1
shift
"$@" &
program=$!
until xwininfo -name "$title" 2>/dev/null | grep -q IsViewable; do
    kill -0 "$program" || exit 1
    sleep 0.02
done
kill -KILL "$program"
wait "$program" 2>/dev/null
exit 0
