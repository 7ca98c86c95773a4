package sheet

import (
	"regexp"
	"strings"
	"unicode"
	"unicode/utf8"
)

// plain is text that can be shown: each rune that a terminal or a browser
// could obey, or that hides or turns its neighbours, becomes a replacement
// character, and each kind of space a plain one. Line breaks stay.
func plain(s string) string {
	s = strings.ReplaceAll(strings.ToValidUTF8(s, string(utf8.RuneError)), "\r\n", "\n")
	return strings.Map(func(r rune) rune {
		switch {
		case r == '\n' || unicode.IsPrint(r):
			return r
		case unicode.IsSpace(r) || unicode.Is(unicode.Zs, r):
			return ' '
		}
		return utf8.RuneError
	}, s)
}

// short is plain text on one line and of bounded length.
func short(s string, most int) string {
	runes := []rune(strings.Join(strings.Fields(plain(s)), " "))
	if len(runes) > most {
		return strings.TrimRight(string(runes[:most-1]), " ") + "…"
	}
	return string(runes)
}

// headline is the first line of a reply.
func headline(reply string) string {
	first, _, _ := strings.Cut(reply, "\n")
	return first
}

// formula finds what a spreadsheet could run: a sign, or a look-alike of one,
// that begins the cell, or a line of it, or what a program that splits at
// semicolons takes for a cell.
var formula = regexp.MustCompile(`(^|[;\n])( *[=+\-@＝﹦＋﹢－﹣＠﹫])`)

// cell is text that a spreadsheet takes for text.
func cell(s string) string {
	out := formula.ReplaceAllString(plain(s), "$1'$2")
	if strings.HasPrefix(s, "\t") || strings.HasPrefix(s, "\r") || strings.HasPrefix(s, "\n") {
		out = "'" + strings.TrimPrefix(out, "'")
	}
	return out
}
