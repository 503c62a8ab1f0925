#!/bin/sh
# Installs a browser and the files of VS Code for the browser, outside the repository; run again, it does nothing.
# WORKBENCH_CACHE moves the folder.
set -eu
cache="${WORKBENCH_CACHE:-$HOME/.cache/jobplan-workbench}"
# The package holds a complete VS Code (1.139.1); its server part is neither compiled nor run.
code_server=4.139.1
# The page loads these two by themselves, to colour text by grammar files; they have nothing to compile.
colours="vscode-oniguruma@1.7.0 vscode-textmate@9.3.2"
stamp="$cache/installed-web"

if ! command -v "${CHROMIUM:-chromium}" > /dev/null; then
  if [ "$(id -u)" != 0 ]; then
    echo 'workbench: install Chromium, or set CHROMIUM to its path' >&2
    exit 1
  fi
  echo 'workbench: installing Chromium'
  apt-get update -qq > /dev/null
  DEBIAN_FRONTEND=noninteractive apt-get install -y -qq --no-install-recommends chromium fonts-dejavu-core > /dev/null
fi

if [ "$(cat "$stamp" 2> /dev/null || true)" = "$code_server $colours" ]; then
  exit 0
fi
echo "workbench: installing VS Code for the browser in $cache"
mkdir -p "$cache"
cd "$cache"
echo '{ "private": true }' > package.json
npm install --no-audit --no-fund --ignore-scripts --force --loglevel=error "code-server@$code_server" $colours > /dev/null
echo "$code_server $colours" > "$stamp"
