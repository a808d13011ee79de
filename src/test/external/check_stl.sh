#!/bin/sh
# Checks every STL file of a folder with admesh: one closed part and nothing to mend.
#
# usage: check_stl.sh FOLDER
#
# Needs admesh (Debian: admesh), which exits 0 on an open mesh too, so that its report is read. Exit 0: all sound. 1: something is
# wrong. 2: nothing to check.

folder=${1:?usage: check_stl.sh FOLDER}
work=$(mktemp -d) || exit 1
trap 'rm -rf "$work"' EXIT
count=0
bad=0

fail() {
    echo "$1: $2" >&2
    bad=$((bad + 1))
}

find "$folder" -name '*.stl' | sort >"$work/files"
while IFS= read -r file; do
    count=$((count + 1))
    if ! admesh "$file" >"$work/report" 2>&1; then
        fail "$file" "admesh cannot read it"
        continue
    fi
    for what in 'Facets with 1 disconnected edge' 'Facets with 2 disconnected edges' 'Facets with 3 disconnected edges' \
        'Total disconnected facets' 'Degenerate facets' 'Edges fixed' 'Facets removed' 'Facets added' 'Facets reversed' \
        'Backwards edges' 'Normals fixed'; do
        line=$(grep "^$what *:" "$work/report")
        # As it was read, and for the disconnected ones as it was left too.
        found=$(echo "$line" | sed 's/^[^:]*: *//; s/ .*//')
        [ "$found" = 0 ] || fail "$file" "${line:-no line about \"$what\"}"
    done
    parts=$(sed -n 's/^Number of parts *: *\([0-9]*\).*/\1/p' "$work/report")
    [ "$parts" = 1 ] || fail "$file" "$parts parts, expected 1"
    volume=$(sed -n 's/.*Volume *: *\(-\{0,1\}[0-9.]*\).*/\1/p' "$work/report")
    case $volume in
        '' | -* | 0.000000) fail "$file" "volume $volume: the faces point inwards" ;;
    esac
    facets=$(sed -n 's/^Number of facets *: *\([0-9]*\).*/\1/p' "$work/report")
    echo "$(basename "$file"): $facets facets, $volume mm3"
done <"$work/files"
[ "$count" -gt 0 ] || { echo "no STL file in $folder" >&2; exit 2; }
echo "$count STL files, $bad problems"
[ "$bad" -eq 0 ]
