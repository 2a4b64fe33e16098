# SPDX-License-Identifier: GPL-3.0-or-later
# shellcheck shell=bash
# Sourced by the scripts beside it: saying what went wrong, and apt-get as root without questions.

fail() {
    echo "$1" >&2
    exit 1
}

is_installed() {
    [[ $(dpkg-query -W -f='${db:Status-Status}' "$1" 2> /dev/null) == installed ]]
}

as_root() {
    if [[ $(id -u) -eq 0 ]]; then
        "$@"
    else
        sudo "$@"
    fi
}

# Runs apt-get without questions and shows what it said only when it fails.
quiet_apt() {
    local said
    said=$(as_root env DEBIAN_FRONTEND=noninteractive apt-get -q -o DPkg::Lock::Timeout=120 "$@" \
        < /dev/null 2>&1) || {
        echo "$said" >&2
        return 1
    }
}
