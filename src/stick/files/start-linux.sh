#!/bin/sh
# Serves the site to this computer alone with whatever the computer has for that, and opens it in the browser.
# PORT=8472 takes another port; NO_BROWSER=1 opens nothing.
cd "$(dirname "$0")/server" || exit 1
port=${PORT:-8471}
address="http://localhost:$port/"

# A bare Mac has a python3 that only asks to be installed.
python_works() {
  command -v python3 >/dev/null 2>&1 || return 1
  [ "$(uname)" != Darwin ] || [ "$(command -v python3)" != /usr/bin/python3 ] ||
    xcode-select -p >/dev/null 2>&1 || return 1
  python3 -c 'from http.server import ThreadingHTTPServer' 2>/dev/null
}

if python_works; then
  set -- python3 serve.py "$port"
elif command -v node >/dev/null 2>&1; then
  set -- node serve.mjs "$port"
elif command -v php >/dev/null 2>&1; then
  set -- php -q -S "127.0.0.1:$port" serve.php
elif command -v ruby >/dev/null 2>&1 && ruby -e 'require "webrick"' 2>/dev/null; then
  set -- ruby serve.rb "$port"
else
  echo 'This computer has nothing to show the site with: python3, node, php or ruby with webrick.'
  echo 'Install one of them, python3 for example, and start this file again.'
  exit 1
fi

open_site() {
  sleep 1
  if command -v open >/dev/null 2>&1 && [ "$(uname)" = Darwin ]; then open "$address"
  elif command -v xdg-open >/dev/null 2>&1; then xdg-open "$address" >/dev/null 2>&1
  fi
}

echo "The site is at $address"
echo 'Leave this window open. Closing it stops the site.'
[ -n "$NO_BROWSER" ] || open_site &
"$@" 2>/dev/null
echo "The site has stopped. If it never came, port $port may be taken: go on in the window where the site is open,"
echo "or start this file with another one: PORT=8472 '$0'"
