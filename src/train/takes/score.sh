#!/usr/bin/env bash
# How well "cuelead review" hears how calls landed: makes takes with known truth, reviews them, and tells how far off it was.
#
#   src/train/takes/score.sh [FOLDER [HALF]]     HALF: dev or new (what numbers may be chosen on), final or fresh (for
#                                                the report only) or all; FOLDER/HALF/TAKE with files as rehearsals.py makes them are kept
#
# Needs target/cuelead.jar, espeak-ng with its library, flite, sox, python3-numpy and python3-scipy.
set -euo pipefail
home=$(cd "$(dirname "$0")/../../.." && pwd)
work=${1:-$home/target/rehearsals}
half=${2:-all}
python=${PYTHON:-/usr/bin/python3}
jar=${JAR:-$home/target/cuelead.jar}

[ -d "$work/dev" ] || "$python" "$home/src/train/takes/rehearsals.py" "$work"
for part in dev new final fresh; do
    [ "$half" = all ] || [ "$half" = "$part" ] || continue
    echo "$part"
    pairs=()
    for take in "$work/$part"/*/; do
        java -jar "$jar" review "$take/take.wav" --plan "$take/script.csv" --calibration "$take/cal.wav" \
            --music "$take/music.wav" --csv >"$take/review.csv" 2>"$take/review.log"
        pairs+=("$take/review.csv" "$take")
    done
    "$python" "$home/src/train/takes/score.py" "${pairs[@]}"
done
