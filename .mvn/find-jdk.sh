# Read by ./twinbar and ./check: finds the JDK, and refuses one that is too old in one sentence.

refuse() {
    echo "$1" >&2
    exit "${2:-2}"
}

# Sets java, home, version and vendor. The file "release" of a JDK tells what asking the JDK itself
# would tell, without the time that it takes to start.
find_jdk() {
    need="Twinbar needs a JDK, version 17 or newer"
    get="install one (Debian and Ubuntu: the package openjdk-17-jdk) or set JAVA_HOME to it"
    if [ -n "${JAVA_HOME:-}" ]; then
        java=$JAVA_HOME/bin/java
        [ -x "$java" ] || refuse "$need, and JAVA_HOME=$JAVA_HOME has no bin/java: set it to a JDK."
    else
        java=$(command -v java) || refuse "$need, and there is no java here: $get."
    fi
    home=$(readlink -f "$java" 2>/dev/null || echo "$java")
    home=${home%/bin/java}
    version= vendor=
    if [ -f "$home/release" ]; then
        while IFS='="' read -r key value rest; do
            case $key in
            JAVA_VERSION) version=${value:-${rest%\"}} ;;
            IMPLEMENTOR) vendor=${value:-${rest%\"}} ;;
            esac
        done <"$home/release"
    fi
    [ -n "$version" ] || ask_jdk
    major=${version%%[!0-9]*}
    [ "${major:-0}" -ge 17 ] || refuse "$need, and $java is version ${version:-unknown}: $get."
    vendor=${vendor%%/*}
}

ask_jdk() {
    settings=$("$java" -XshowSettings:properties -version 2>&1) || true
    while read -r key equals value; do
        [ "$equals" = "=" ] || continue
        case $key in
        java.home) home=$value ;;
        java.version) version=$value ;;
        java.vendor) vendor=$value ;;
        esac
    done <<END
$settings
END
}
