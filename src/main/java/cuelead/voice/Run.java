package cuelead.voice;

/** Steps of 2 ms, from the first to the last. */
record Run(int first, int last) {}
