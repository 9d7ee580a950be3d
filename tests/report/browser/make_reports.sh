#!/bin/sh
# SPDX-License-Identifier: GPL-2.0-or-later
# make_reports.sh PROGRAM FOLDER CASE...: a result folder for each case; a case that does not pass has a report as well.
set -eu
program=$1 folder=$2
shift 2
mkdir -p -- "$folder"
for case_file in "$@"
do
    name=$(basename -- "$case_file" .toml)
    status=0
    "$program" check "$case_file" --out "$folder/$name" >/dev/null 2>&1 || status=$?
    [ "$status" -le 1 ] || { printf '%s: exit status %s\n' "$case_file" "$status" >&2; exit 1; }
    printf '%s/%s/report.html\n' "$folder" "$name"
done
