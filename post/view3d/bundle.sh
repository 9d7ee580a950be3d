#!/bin/sh
# SPDX-License-Identifier: GPL-2.0-or-later
# bundle.sh FOLDER OUTPUT: the script of the view from its sources and the libraries of package-lock.json, made in FOLDER.
# The libraries come from npm's cache where it has them, else from the network.
set -eu
here=$(dirname -- "$(readlink -f -- "$0")")
folder=$1 output=$2
mkdir -p -- "$folder"
rm -rf -- "$folder/source"
cp -r -- "$here/source" "$here/package.json" "$here/package-lock.json" "$here/licences.txt" "$folder/"
cd -- "$folder"
# Nothing that a library brings is run while it is installed.
npm ci --prefer-offline --ignore-scripts --no-audit --no-fund
npm run --silent bundle -- --outfile=bundled.js
{ printf '/*\n'; cat licences.txt; printf '*/\n'; cat bundled.js; } >"$folder/view3d.js"
cd - >/dev/null
mv -- "$folder/view3d.js" "$output"
