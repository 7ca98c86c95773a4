package main

import (
	"strings"
	"unicode"
)

// wordJoiner stands before a question that begins with a dash, so that "-14
// in" is read as a question and not as an option.
const wordJoiner = "\u2060"

// guarded marks the arguments that are a question in spite of their dash: a
// number, or several words.
func guarded(args []string) []string {
	out := make([]string, len(args))
	for i, a := range args {
		out[i] = a
		if rest, ok := strings.CutPrefix(a, "-"); ok && rest != "" &&
			(unicode.IsDigit(rune(rest[0])) || rest[0] == '.' || strings.ContainsRune(a, ' ') && !strings.HasPrefix(a, "--")) {
			out[i] = wordJoiner + a
		}
	}
	return out
}

// unguarded takes the mark off again.
func unguarded(words []string) string {
	return strings.ReplaceAll(strings.Join(words, " "), wordJoiner, "")
}
