#!/usr/bin/env bash
# in_a_hall.sh FROM TO: how the songs of a folder (WAV with beat files) sound in a hall that is not quiet: from a small
# loudspeaker, with echoes and with the noise of people, recorded with few bits. Times stay as they are.
#
# The noise has one level, -37 dB (RMS), whatever the song: soft songs drown in it. Needs, from Debian: sox lame.
set -euo pipefail
mkdir -p "$2"
work=$(mktemp -d)
trap 'rm -rf "$work"' EXIT

for song in "$1"/*.wav; do
    name=$(basename "$song" .wav)
    [ -e "$2/$name.beats" ] && continue
    # -R: the same noise every time
    sox -R "$song" -r 44100 -c 1 "$work/song.wav"
    sox -R "$work/song.wav" "$work/echoing.wav" gain -6 reverb 45 50 70 highpass 120 lowpass 6000 2>/dev/null
    sox -R -n -r 44100 -c 1 "$work/people.wav" synth "$(soxi -D "$work/song.wav")" pinknoise vol 0.06 2>/dev/null
    sox -R -m -v 1 "$work/echoing.wav" -v 1 "$work/people.wav" "$work/hall.wav" gain -n -2 2>/dev/null
    lame --quiet -b 64 -m m "$work/hall.wav" "$work/hall.mp3"
    lame --quiet --decode "$work/hall.mp3" "$work/heard.wav" # which takes the coder's delay away
    sox -R "$work/heard.wav" -r 22050 "$2/$name.wav"
    cp "${song%.wav}.beats" "$2"
done
