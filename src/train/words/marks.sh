#!/usr/bin/env bash
# How exactly Cuelead marks the perceptual centre of recorded words: makes takes whose times are known, lets
# "cuelead record" mark them, and tells how far off the marks are.
#
#   src/train/words/marks.sh [FOLDER [PART [FIRST [SEED]]]]    every PART-th of 72 voices, rates and noises, from FIRST
#                                                              on; another SEED makes other rooms around the words
#
# Needs target/cuelead.jar, espeak-ng with its library, flite, python3-numpy and python3-scipy.
set -euo pipefail
home=$(cd "$(dirname "$0")/../../.." && pwd)
work=${1:-$home/target/takes}
python=${PYTHON:-/usr/bin/python3}
jar=${JAR:-$home/target/cuelead.jar}

"$python" "$home/src/train/words/takes.py" "$home/src/train/words/words.txt" "$work" --part "${2:-1}" --first "${3:-0}" \
    --seed "${4:-}"
for condition in "$work"/*/; do
    nice -n 10 java -jar "$jar" record --folder "$condition" >"$work/marked.log" 2>&1
done
"$python" "$home/src/train/words/marks.py" "$work"
