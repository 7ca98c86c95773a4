package scan

import (
	"strings"
	"unicode"
)

// CueCountless marks a number in words, with the word beside it, that counts nothing:
// "three things: ...", "quedó al cien".
const CueCountless Cue = "countless"

// countless says whether the number in words at i, n bytes long, is one of talk. Before
// another word it may count what that word says ("tres cosas de 40 kg"), and before a
// unit it is a size.
func (s *scanner) countless(i, n int) bool {
	number, rest := Fold(s.text[i:i+n]), s.text[i+n:]
	next, end := NextWord(rest)
	if s.tongue.Cued(number+" "+next, CueCountless) {
		return breathEnds(rest[end:])
	}
	before := strings.Fields(s.text[max(0, s.at):i])
	return len(before) > 0 && s.tongue.Cued(Fold(before[len(before)-1])+" "+number, CueCountless) && s.tongue.Units[next] == nil
}

// breathEnds says whether no word and no number follows but behind a mark.
func breathEnds(rest string) bool {
	rest = strings.TrimLeft(rest, " \t")
	for _, r := range rest {
		return !unicode.IsLetter(r) && !unicode.IsDigit(r)
	}
	return true
}

// enumerates says whether the figure at s.at, which ends at end, only numbers what is
// asked: "1) weight 2) wraps". Both the first and the second must stand so.
func (s *scanner) enumerates(end int) bool {
	open := s.at == 0 || strings.ContainsRune(" \n:;,.", rune(s.text[s.at-1]))
	listed := func(mark string) bool {
		return strings.HasPrefix(s.text, mark) || strings.Contains(s.text, " "+mark) || strings.Contains(s.text, "\n"+mark)
	}
	return open && end == s.at+1 && strings.HasPrefix(s.text[end:], ")") && listed("1)") && listed("2)")
}
