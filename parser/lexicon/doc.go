// Package lexicon knows what words mean: it reads the word files of language and the
// names of trees, finds the longest spelling that fits, and mends what is typed badly,
// by a slip, by sound, chopped short or without its space.
package lexicon
