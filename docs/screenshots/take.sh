#!/bin/sh
# Takes all pictures in this folder, or those that are named: sh docs/screenshots/take.sh [NAME...]
# Wants Xvfb, GTK 3 and ImageMagick (Debian: xvfb libgtk-3-0 imagemagick), and `mvn test-compile` done before.
set -e
cd "$(dirname "$0")/../.."
classpath=$(mktemp)
mvn -q dependency:build-classpath -Dmdep.outputFile="$classpath" -Dmdep.includeScope=test
shots() { # size, scale, suffix, names
    size=$1 scale=$2 suffix=$3
    shift 3
    display=:$((100 + $$ % 300))
    Xvfb "$display" -screen 0 "${size}x24" >/dev/null 2>&1 &
    server=$!
    sleep 1
    DISPLAY="$display" java -Dprism.order=sw -Dglass.gtk.uiScale="$scale" \
        -cp "target/classes:target/test-classes:$(cat "$classpath")" \
        'haftline.ui.app.Screenshots$Take' docs/screenshots "$suffix" "$@" || { kill "$server"; exit 1; }
    kill "$server"
    wait "$server" 2>/dev/null || true
}
shots 1366x768 1 -1366 "$@"
shots 1920x1080 1 -1920 "$@"
shots 2732x1536 2 -200percent "$@"
rm -f "$classpath"
