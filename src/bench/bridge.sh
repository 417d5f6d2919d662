#!/usr/bin/env bash
# Measures how long LibreOffice takes to recalculate 20,000 cells of plain arithmetic, of functions that do nothing and of a
# function of the pack, each cell by itself and all as one array formula. The add-in that does nothing is made here and is no part of the extension.
#
#   src/bench/bridge.sh [RUNS]     default 5; needs mvn -DskipTests package before it
set -euo pipefail
cd "$(dirname "${BASH_SOURCE[0]}")/../.."

runs=${1:-5}
work=target/bench/bridge
uno=$(find "$HOME/.m2/repository/org/libreoffice/libreoffice" -name 'libreoffice-*.jar' | head -n 1)
[ -f target/shaftwright.oxt ] || { echo "bridge: target/shaftwright.oxt is missing; run mvn -DskipTests package" >&2; exit 1; }
rm -rf "$work"
mkdir -p "$work/classes" "$work/part/META-INF"

javac -nowarn -cp "$uno" -d "$work/classes" src/bench/bridge/*.java
printf 'RegistrationClassName: Bridge\n' >"$work/manifest"
jar cfm "$work/part/bridge.jar" "$work/manifest" -C "$work/classes" .
cat >"$work/part/bridge.idl" <<'IDL'
interface XBridge : com::sun::star::uno::XInterface {
    double nothing();
    double numbers([in] double reach, [in] double rise, [in] double foreaft);
    any empty([in] any reach, [in] any rise, [in] any foreaft, [in] any unit);
    any emptyindocument([in] com::sun::star::beans::XPropertySet document, [in] any reach, [in] any rise, [in] any foreaft, [in] any unit);
};
IDL
cat >"$work/part/bridge.components" <<'XML'
<?xml version="1.0" encoding="UTF-8"?>
<components xmlns="http://openoffice.org/2010/uno-components"><component loader="com.sun.star.loader.Java2" uri="bridge.jar">
<implementation name="Bridge"><service name="com.sun.star.sheet.AddIn"/><service name="BRIDGE"/></implementation></component></components>
XML
cat >"$work/part/CalcAddIns.xcu" <<'XML'
<?xml version="1.0" encoding="UTF-8"?>
<oor:component-data xmlns:oor="http://openoffice.org/2001/registry" xmlns:xs="http://www.w3.org/2001/XMLSchema" oor:name="CalcAddIns" oor:package="org.openoffice.Office">
<node oor:name="AddInInfo"><node oor:name="BRIDGE" oor:op="replace"><node oor:name="AddInFunctions">
<node oor:name="nothing" oor:op="replace"><prop oor:name="DisplayName"><value xml:lang="en-US">BRIDGE.NOTHING</value></prop></node>
<node oor:name="numbers" oor:op="replace"><prop oor:name="DisplayName"><value xml:lang="en-US">BRIDGE.NUMBERS</value></prop></node>
<node oor:name="empty" oor:op="replace"><prop oor:name="DisplayName"><value xml:lang="en-US">BRIDGE.EMPTY</value></prop></node>
<node oor:name="emptyindocument" oor:op="replace"><prop oor:name="DisplayName"><value xml:lang="en-US">BRIDGE.EMPTYINDOCUMENT</value></prop></node>
</node></node></node></oor:component-data>
XML
cat >"$work/part/description.xml" <<'XML'
<?xml version="1.0" encoding="UTF-8"?>
<description xmlns="http://openoffice.org/extensions/description/2006"><identifier value="shaftwright.bench.bridge"/><version value="1"/></description>
XML
cat >"$work/part/META-INF/manifest.xml" <<'XML'
<?xml version="1.0" encoding="UTF-8"?>
<manifest:manifest xmlns:manifest="http://openoffice.org/2001/manifest">
<manifest:file-entry manifest:full-path="bridge.idl" manifest:media-type="application/vnd.sun.star.uno-typelibrary;type=RDB"/>
<manifest:file-entry manifest:full-path="bridge.components" manifest:media-type="application/vnd.sun.star.uno-components"/>
<manifest:file-entry manifest:full-path="CalcAddIns.xcu" manifest:media-type="application/vnd.sun.star.configuration-data"/>
</manifest:manifest>
XML
jar cfM "$work/bridge.oxt" -C "$work/part" .

profile=("-env:UserInstallation=file://$PWD/$work/lo" "-env:UNO_SHARED_PACKAGES_CACHE=file://$PWD/$work/shared")
for extension in target/shaftwright.oxt "$work/bridge.oxt"; do
    unopkg add -s --shared "${profile[@]}" "$extension"
done
/usr/bin/python3 src/bench/bridge.py "${profile[@]}" "$runs"
