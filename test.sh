#!/usr/bin/env bash
# Passes all tests and gates. Brings its own display where there is none, or on CI; as root on
# Debian it also installs the packages that are missing.
set -euo pipefail
cd "$(dirname "${BASH_SOURCE[0]}")"

own_display=no
if [ -z "${DISPLAY:-}" ] || [ "${CI:-}" = true ]; then
    own_display=yes
fi

has() { command -v "$1" > /dev/null; }

missing_packages() {
    has javac || echo openjdk-17-jdk
    has mvn || echo maven
    has chromium || echo chromium
    has chromedriver || echo chromium-driver
    has pdftoppm || echo poppler-utils
    [ -f /usr/share/dita-ot/catalog-dita.xml ] || echo dita-ot
    has fc-list && [ -n "$(fc-list 'DejaVu Sans')" ] || echo fonts-dejavu
    [ -n "$(ldconfig -p | grep 'libgtk-3\.so\.0')" ] || echo libgtk-3-0
    if [ "$own_display" = yes ]; then
        has Xvfb || echo xvfb
        has openbox || echo openbox
        has xprop || echo x11-utils
    fi
}

missing=$(missing_packages | tr '\n' ' ')
if [ -n "$missing" ]; then
    if [ "$(id -u)" = 0 ] && has apt-get; then
        echo "Installing $missing"
        export DEBIAN_FRONTEND=noninteractive
        apt-get -qq update < /dev/null
        # shellcheck disable=SC2086  # one word a package
        apt-get -qq install -y --no-install-recommends $missing < /dev/null > /dev/null
    else
        echo "test.sh: these Debian packages are missing: $missing" >&2
        exit 2
    fi
fi

# shellcheck source=gates/display.sh
. gates/display.sh

mvn -B -ntp verify < /dev/null
