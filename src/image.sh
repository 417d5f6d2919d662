#!/usr/bin/env bash
# Makes an image with a Java runtime of its own, which needs nothing installed and lies anywhere:
#
#   src/image.sh [JAR]     packages the program first unless a jar is given
#
#   target/image/shaftwright/                      bin/shaftwright starts it
#   target/image/shaftwright-VERSION-SYSTEM.tar.gz    the same, to hand on
#   target/image/shaftwright-VERSION-portable.zip     jar and scripts, for those who have a Java; also as .tar.gz
#
# By the JDK in JAVA_HOME, else the one on the path: 17 or newer with jlink, best a self-contained
# one of 19 or newer. On macOS and Windows (a bash there) jpackage puts a double-clickable program
# around the same runtime; that was never tried.
set -euo pipefail
cd "$(dirname "${BASH_SOURCE[0]}")/.."

jdk=${JAVA_HOME:-}
[ -n "$jdk" ] || jdk=$(dirname "$(dirname "$(readlink -f "$(command -v javac)")")")
jlink=$jdk/bin/jlink
[ -x "$jlink" ] || { echo "image: $jdk has no jlink; set JAVA_HOME to a whole JDK" >&2; exit 1; }
release=$("$jdk/bin/java" -XshowSettings:properties -version 2>&1 | sed -n 's/.*java.specification.version = //p')
[ "$release" -ge 17 ] || { echo "image: $jdk is Java $release; 17 or newer is needed" >&2; exit 1; }
if [ "$release" -lt 24 ] && [ ! -d "$jdk/jmods" ]; then
    echo "image: $jdk has no jmods to link an image of" >&2
    exit 1
fi

jar=${1:-}
if [ -z "$jar" ]; then
    mvn -q -B -DskipTests package
    jar=target/shaftwright.jar
fi
version=$(sed -n 's/.*<version>\(.*\)<\/version>.*/\1/p' pom.xml | head -1)
system=$(uname -s | tr '[:upper:]' '[:lower:]')-$(uname -m)
image=target/image/shaftwright
rm -rf target/image
mkdir -p "$image/bin" "$image/lib"

compress=2
[ "$release" -lt 21 ] || compress=zip-6
"$jlink" --add-modules java.base,java.desktop,java.xml.crypto --strip-debug --no-header-files --no-man-pages \
    --compress="$compress" --output "$image/runtime"
java=$image/runtime/bin/java

cp "$jar" "$image/lib/shaftwright.jar"
# Picocli's class files are of Java 5, which no archive of classes takes: compiled anew, each start has a tenth of
# a second of processor less to do.
picocli=$(sed -n 's/.*<picocli.version>\(.*\)<\/picocli.version>.*/\1/p' pom.xml)
work=$(mktemp -d)
trap 'rm -rf "$work"' EXIT
mvn -q -B dependency:copy -Dartifact="info.picocli:picocli:$picocli:jar:sources" -DoutputDirectory="$work"
(cd "$work" && mkdir classes && "$jdk/bin/jar" --extract --file "picocli-$picocli-sources.jar" picocli &&
    "$jdk/bin/javac" -nowarn -proc:none -g:none --release 17 -d classes picocli/*.java)
"$jdk/bin/javac" -proc:none -g:none --release 17 -cp "$jar" -d "$work/classes" src/image/Training.java
"$jdk/bin/jar" --update --file "$image/lib/shaftwright.jar" -C "$work/classes" .
cp src/image/shaftwright src/image/add-to-menu.sh "$image/"
mv "$image/shaftwright" "$image/bin/shaftwright"
chmod +x "$image/bin/shaftwright"
cp LICENSE "$image/"
mkdir -p "$image/workbooks"
cp workbooks/*.xlsx "$image/workbooks/"

# From 19 on an archive of classes counts wherever the folder lies.
moves=yes
[ "$release" -ge 19 ] || moves=no
home=$(cd "$image" && pwd -P)
printf '%s\n' "$home" >"$image/lib/made-in"
printf '%s\n' "$version-$(cksum <"$jar" | cut -d' ' -f1) $moves" >"$image/lib/build"

# All archives are for the options that the launcher gives. From 25 on one run makes one that holds classes already
# linked, and what of the training run was compiled to.
options=(-XX:TieredStopAtLevel=1 -XX:+UseSerialGC)
archive=shaftwright.jsa
training=-XX:ArchiveClassesAtExit=$home/lib/$archive
using=-XX:SharedArchiveFile=
if [ "$release" -ge 25 ]; then
    archive=shaftwright.aot
    training=-XX:AOTCacheOutput=$home/lib/$archive
    using=-XX:AOTCache=
else
    "$java" -Xshare:dump "${options[@]}" >/dev/null
fi
cp workbooks/forest-special-inch.xlsx "$work/a.xlsx"
"$java" -Xlog:disable "$training" "${options[@]}" \
    -cp "$home/lib/shaftwright.jar" shaftwright.cli.Training "$work/a.xlsx" >/dev/null 2>"$work/said" ||
    { cat "$work/said" >&2; exit 1; }
"$image/bin/shaftwright" --version
mkdir -p "$image/share/man/man1"
"$image/bin/shaftwright" manual >"$image/share/man/man1/shaftwright.1"

# What the runtime takes from the system, which another one may not have.
if [ "$(uname -s)" = Linux ] && command -v ldd >/dev/null; then
    foreign=$(ldd "$image"/runtime/lib/*.so 2>/dev/null |
        sed -n 's/^[[:space:]]*\(lib[^ ]*\) => \/\(lib\|usr\).*/\1/p' | sort -u |
        grep -vE '^(libc|libm|libdl|libpthread|librt|libgcc_s|libstdc\+\+|libX11|libXext|libXi|libXrender|libXtst|libxcb|libXau|libXdmcp|libasound|libbsd|libmd)\.' || true)
    if [ -n "$foreign" ]; then
        echo "image: this JDK links libraries of this system ($(echo $foreign)): the image is for this machine; to hand it" \
            "on take a self-contained JDK"
    fi
fi
if [ "$moves" = no ]; then
    echo "image: Java $release takes the archive of classes only where it was made; elsewhere the first start makes its own"
fi

case $(uname -s) in
    Darwin | MINGW* | MSYS* | CYGWIN*)
        "$jdk/bin/jpackage" --type app-image --name Shaftwright --dest target/image --app-version "${version%%-*}" \
            --runtime-image "$image/runtime" --input "$image/lib" --main-jar shaftwright.jar \
            --java-options "$using\$APPDIR/$archive -XX:TieredStopAtLevel=1 -XX:+UseSerialGC"
        ;;
esac

tar -C target/image -czf "target/image/shaftwright-$version-$system.tar.gz" shaftwright
portable=target/image/shaftwright-$version-portable
mkdir -p "$portable"
cp "$jar" "$portable/shaftwright.jar"
cp src/image/fill.sh src/image/fill.bat LICENSE "$portable/"
cp src/image/fill.sh "$portable/fill.command"
chmod +x "$portable/fill.sh" "$portable/fill.command"
sed -i.bak 's/$/\r/' "$portable/fill.bat" && rm -f "$portable/fill.bat.bak"
# A zip for Windows; the other knows which files are programs.
(cd target/image && "$jdk/bin/jar" --create --no-manifest --file "${portable##*/}.zip" "${portable##*/}")
tar -C target/image -czf "$portable.tar.gz" "${portable##*/}"
rm -rf "$portable"
du -sh "$image" target/image/shaftwright-*
