#!/usr/bin/env bash
# Writes REPORT.md beside this script: how well a speech recogniser understands each call-word, as each voice says it.
#
#   src/train/words/report.sh [FOLDER]     FOLDER: for the spoken words (default: target/words)
#
# Needs target/cuelead.jar and Debian's python3-numpy, python3-pocketsphinx and pocketsphinx-en-us; espeak-ng where it
# is installed. The recogniser only listens here; the program does not use it.
set -euo pipefail
home=$(cd "$(dirname "$0")/../../.." && pwd)
scripts=$home/src/train/words
work=${1:-$home/target/words}
python=${PYTHON:-/usr/bin/python3}
jar=${JAR:-$home/target/cuelead.jar}

voices=(built-in)
command -v espeak-ng >/dev/null && voices+=(espeak-ng)
for voice in "${voices[@]}"; do
    mkdir -p "$work/$voice"
    while read -r word; do
        java -Xshare:auto -jar "$jar" say "$word" --voice "$voice" --rate 16000 \
            -o "$work/$voice/${word// /_}.wav" 2>"$work/said.log" || cat "$work/said.log"
    done <"$scripts/words.txt"
done
nice -n 10 "$python" "$scripts/report.py" "$scripts/words.txt" "$work" "${voices[@]}" >"$work/REPORT.md"
mv "$work/REPORT.md" "$scripts/REPORT.md"
