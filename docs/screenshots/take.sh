#!/bin/sh
# Takes all pictures in this folder: sh docs/screenshots/take.sh; those whose names match a pattern: sh docs/screenshots/take.sh "line-up.*"
# Wants Xvfb, GTK 3 and ImageMagick (Debian: xvfb libgtk-3-0 imagemagick), and `mvn test-compile` done before.
set -e
only=${1:-.*}
cd "$(dirname "$0")/../.."
classpath=$(mktemp)
mvn -q dependency:build-classpath -Dmdep.outputFile="$classpath" -Dmdep.includeScope=test
shots() { # size, scale, suffix
    display=:$((100 + $$ % 300))
    Xvfb "$display" -screen 0 "$1x24" >/dev/null 2>&1 &
    server=$!
    sleep 1
    DISPLAY="$display" java -Dprism.order=sw -Dglass.gtk.uiScale="$2" \
        -cp "target/classes:target/test-classes:$(cat "$classpath")" \
        'haftline.ui.app.Screenshots$Take' docs/screenshots "$3" "$only" || { kill "$server"; exit 1; }
    kill "$server"
    wait "$server" 2>/dev/null || true
}
shots 1366x768 1 -1366
shots 1920x1080 1 -1920
shots 2732x1536 2 -200percent
rm -f "$classpath"
