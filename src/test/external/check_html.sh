#!/bin/sh
# Opens every HTML sheet of a folder in a headless browser without a network, prints it to PDF and counts the pages: a lathe sheet and a
# care card are one page, an instruction sheet two, whatever font the machine has. Each file must be well-formed too.
#
# usage: check_html.sh FOLDER
#
# Needs chromium, xmllint (libxml2-utils), pdfinfo, pdftotext (poppler-utils). Each file has half a minute. Exit 0: all sound. 1:
# something is wrong. 2: nothing to check. Where there is no chromium it says so and exits 0.

folder=${1:?usage: check_html.sh FOLDER}
command -v chromium >/dev/null || { echo "no chromium here: HTML sheets not printed"; exit 0; }
work=$(mktemp -d) || exit 1
trap 'rm -rf "$work"' EXIT
count=0
bad=0

fail() {
    echo "$1: $2" >&2
    bad=$((bad + 1))
}

for file in "$folder"/*.html; do
    [ -e "$file" ] || { echo "no HTML file in $folder" >&2; exit 2; }
    count=$((count + 1))
    xmllint --noout --nonet "$file" 2>"$work/errors" || fail "$file" "$(head -1 "$work/errors")"
    grep -Eqi '(src|href) *=|url\(|@import|<script' "$file" && fail "$file" "it asks for something from outside"
    rm -f "$work/out.pdf"
    timeout 30 chromium --headless --no-sandbox --disable-gpu --host-resolver-rules='MAP * 127.0.0.1:9' \
        --user-data-dir="$work/profile" --no-pdf-header-footer --print-to-pdf="$work/out.pdf" "file://$(realpath "$file")" \
        >/dev/null 2>&1
    [ -s "$work/out.pdf" ] || { fail "$file" "the browser printed nothing"; continue; }
    pages=$(pdfinfo "$work/out.pdf" | sed -n 's/^Pages: *//p')
    case "$file" in
        *-instructions.html) expected=2 ;;
        *) expected=1 ;;
    esac
    [ "$pages" = "$expected" ] || fail "$file" "$pages pages printed, $expected expected"
    pdftotext -raw "$work/out.pdf" - | grep -q . || fail "$file" "no words on its pages"
done
echo "$count HTML files, $bad problems"
[ "$bad" -eq 0 ]
