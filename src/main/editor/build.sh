#!/bin/sh
# Rebuilds the text editor component from its locked sources. Needs Node.js 20 or newer.
# Output: META-INF/resources/vendor/codemirror.js and its licenses, both committed.
set -eu
cd "$(dirname "$0")"
out=../resources/META-INF/resources/vendor
npm ci --ignore-scripts --silent
mkdir -p "$out"
node_modules/.bin/esbuild codemirror.mjs --bundle --minify --format=esm --target=es2022 \
  --legal-comments=none --outfile="$out/codemirror.js"
node licenses.mjs > "$out/codemirror.licenses.txt"
