#!/bin/sh
# SPDX-License-Identifier: GPL-2.0-or-later
# make_study.sh PROGRAM FOLDER CASE: the folder of a small study of its options, in FOLDER/study.
set -eu
program=$1 folder=$2 case_file=$3
rm -rf -- "$folder"
mkdir -p -- "$folder"
"$program" compare "$case_file" --vary sleeve.length=76mm,84mm --vary sleeve.weld.leg=5mm,6mm --accuracy 5 \
    --store "$folder/store" --out "$folder/study" >/dev/null 2>&1
printf '%s/study/report.html\n' "$folder"
