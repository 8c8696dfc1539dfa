# Shared by tests/run, demo/run and .ci/run; sourced, not run. Expects $top, the project's folder.

say() { printf '%s\n' "$*"; }
fail() { printf '%s: %s\n' "$(basename "$(dirname "$0")")/$(basename "$0")" "$*" >&2; exit 1; }

# install_missing NAME...: installs the Debian packages of these that are not there yet; asks nothing.
install_missing() {
    if ! command -v dpkg-query >/dev/null || ! command -v apt-get >/dev/null; then
        say "This is no Debian system; these packages, or what they are called here, must be there: $*"
        return 0
    fi
    local present missing=() name log="$top/.build/install.log" as_root=()
    # Of a package that it has never heard of dpkg-query says 1: that is an answer, and no failure.
    present=$({ dpkg-query -W -f '${db:Status-Status} ${Package}\n' "$@" 2>/dev/null || true; } |
        sed -n 's/^installed //p')
    for name in "$@"; do
        grep -qxF "$name" <<<"$present" || missing+=("$name")
    done
    [ ${#missing[@]} -gt 0 ] || return 0
    if [ "$(id -u)" -ne 0 ]; then
        sudo -n true 2>/dev/null ||
            fail "these packages are missing and need root (or sudo without a password) to install: ${missing[*]}"
        as_root=(sudo -n)
    fi
    say "Installing ${#missing[@]} packages: ${missing[*]}"
    mkdir -p "$top/.build"
    local apt=("${as_root[@]}" env DEBIAN_FRONTEND=noninteractive apt-get -qq -o DPkg::Lock::Timeout=300 -o Acquire::Retries=3)
    if ! { "${apt[@]}" update && "${apt[@]}" install -y --no-install-recommends "${missing[@]}"; } >"$log" 2>&1; then
        tail -n 15 "$log" >&2
        fail "the packages could not be installed; the whole log is $log"
    fi
}

# configure FOLDER COMPILER CMAKE-ARGUMENT...: with Ninja, quietly; nothing is done anew without need.
configure() {
    local folder=$1 compiler=$2 log="$1/configure.log" launcher=()
    shift 2
    mkdir -p "$folder"
    if command -v ccache >/dev/null; then
        launcher=(-DCMAKE_CXX_COMPILER_LAUNCHER=ccache)
        export CCACHE_BASEDIR=$top CCACHE_SLOPPINESS=pch_defines,time_macros # else it passes precompiled headers by
    fi
    cmake -S "$top" -B "$folder" -G Ninja -DCMAKE_CXX_COMPILER="$compiler" "${launcher[@]}" "$@" >"$log" 2>&1 || {
        tail -n 30 "$log" >&2
        fail "cmake could not configure; the whole log is $log"
    }
}

# The other compiler, which .ci/run builds the programs with and .ci/tidy reads the code with. No file is helped by another
# here: none is compiled together with the rest of its folder, and no headers are compiled beforehand.
clang_folder=$top/.build/clang
configure_for_clang() {
    configure "$clang_folder" clang++ -DCMAKE_BUILD_TYPE=Release -DBUILD_TESTING=ON -DCMAKE_UNITY_BUILD=OFF \
        -DCMAKE_DISABLE_PRECOMPILE_HEADERS=ON -DCMAKE_EXPORT_COMPILE_COMMANDS=ON -DLOOPWRIGHT_WARNINGS_ARE_ERRORS=ON
}

# build FOLDER [TARGET...]: shows Ninja's progress on a terminal, else only what goes wrong.
build() {
    local folder=$1 log="$1/build.log" targets=()
    shift
    [ $# -eq 0 ] || targets=(--target "$@")
    if [ -t 1 ]; then
        cmake --build "$folder" -j "$(nproc)" "${targets[@]}" || fail "the build failed"
    else
        cmake --build "$folder" -j "$(nproc)" "${targets[@]}" >"$log" 2>&1 || {
            grep -nE 'error:|FAILED|undefined reference' "$log" | head -n 40 >&2
            fail "the build failed; the whole log is $log"
        }
    fi
}

# A home of its own, so that nobody's records or settings are touched.
own_home() {
    local home=$1
    mkdir -p "$home/data" "$home/config" "$home/cache"
    export XDG_DATA_HOME=$home/data XDG_CONFIG_HOME=$home/config XDG_CACHE_HOME=$home/cache
    if [ -z "${XDG_RUNTIME_DIR:-}" ]; then
        mkdir -p -m 700 "$home/runtime"
        export XDG_RUNTIME_DIR=$home/runtime
    fi
    unset LOOPWRIGHT_DB
}
