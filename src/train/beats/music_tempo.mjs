// music_tempo.mjs FOLDER HEARD: the beats that music-tempo (npm, MIT; BeatRoot's method) finds in each WAV of FOLDER, for benchmark.sh
import { createRequire } from 'node:module';
import { readFileSync, readdirSync, writeFileSync } from 'node:fs';

const MusicTempo = createRequire(process.env.PEERS + '/')('music-tempo');
const [folder, heard] = process.argv.slice(2);
const HEADER_BYTES = 44;

/** Its settings are for 44,100 Hz: every second sample is put between two. */
function samples(file) {
    const bytes = readFileSync(file).subarray(HEADER_BYTES);
    const wide = new Float32Array(bytes.length);
    for (let i = 0; i < bytes.length / 2; i++) {
        wide[2 * i] = bytes.readInt16LE(2 * i) / 32768;
        if (i > 0) wide[2 * i - 1] = (wide[2 * i - 2] + wide[2 * i]) / 2;
    }
    return wide;
}

for (const name of readdirSync(folder).filter((n) => n.endsWith('.wav'))) {
    let beats = [];
    try {
        beats = new MusicTempo(samples(`${folder}/${name}`)).beats;
    } catch (none) {
        console.error(`${name}: ${none}`);
    }
    writeFileSync(`${heard}/${name.replace('.wav', '.beats')}`, beats.map((b) => `${b}\t1\t1\n`).join(''));
}
