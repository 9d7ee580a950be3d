#!/bin/sh
# SPDX-License-Identifier: GPL-2.0-or-later
# bundle_test.sh BUNDLE_SCRIPT FOLDER COMMITTED: the committed script is what its sources and its lock file give, byte for
# byte. Skipped, status 77, without npm, or where npm reaches neither its cache nor a network.
set -eu
bundle=$1 folder=$2 committed=$3
if ! command -v npm >/dev/null
then
    echo 'skipped: no npm; apt-get install npm'
    exit 77
fi
mkdir -p -- "$folder"
if ! "$bundle" "$folder" "$folder/again.js" >"$folder/log" 2>&1
then
    cat -- "$folder/log"
    if grep -qE 'ENOTFOUND|EAI_AGAIN|ECONNREFUSED|ECONNRESET|ETIMEDOUT|ENETUNREACH|ENOTCACHED' "$folder/log"
    then
        echo 'skipped: npm reaches neither a network nor these packages in its cache'
        exit 77
    fi
    exit 1
fi
cmp -- "$folder/again.js" "$committed"
echo 'the same, byte for byte'
