package lexicon

import "strings"

// Some slips are so common on a phone that they are likely in short words too: a letter
// typed twice or once instead ("liimb", "hitt"), a vowel left out ("whre", "limt"), the
// key beside the right one ("whiye"), and one letter lost inside a word ("bock").

// fewestThumbed is how many letters a word must have to be mended so.
const fewestThumbed = 4

// never is more than any slip that is mended costs.
const never = 99

// thumbed is what it costs to take the word for another by such a slip, counted as
// Distance does: the doubled letter and the lost vowel are as likely as a swap.
func (s *Search) thumbed(w string, n int) int {
	switch {
	case s.Letters < fewestThumbed || len(s.word) != s.Letters || len(w) != n:
		return never
	case n != s.Letters && squeezed(s.word) == squeezed(w):
		return 1
	case n == s.Letters+1 && strings.ContainsRune("aeiou", lost(s.word, w)):
		return 1
	case n == s.Letters+1 && lost(s.word, w) != 0 && w[n-1] == s.word[s.Letters-1]:
		return 2
	case n == s.Letters && n > fewestThumbed && besideKey(s.word, w):
		return 2
	}
	return never
}

// squeezed is a word with every doubled letter single.
func squeezed(w string) string {
	out := make([]byte, 0, len(w))
	for i := range len(w) {
		if i == 0 || w[i] != w[i-1] {
			out = append(out, w[i])
		}
	}
	return string(out)
}

// lost is the letter inside or behind a word that a shorter one has not, 0 where they
// differ by more.
func lost(short, long string) rune {
	i := 0
	for i < len(short) && short[i] == long[i] {
		i++
	}
	if i == 0 || short[i:] != long[i+1:] {
		return 0
	}
	return rune(long[i])
}

// rows are the letters as they stand beside each other on a keyboard.
var rows = []string{"qwertyuiop", "asdfghjkl", "zxcvbnm"}

// besideKey says whether two words differ by one letter, behind the first, that was hit
// in the place of its neighbour.
func besideKey(a, b string) bool {
	at := -1
	for i := range len(a) {
		if a[i] == b[i] {
			continue
		}
		if at >= 0 || i == 0 {
			return false
		}
		at = i
	}
	for _, row := range rows {
		x, y := strings.IndexByte(row, a[max(at, 0)]), strings.IndexByte(row, b[max(at, 0)])
		if at > 0 && x >= 0 && y >= 0 && (x-y == 1 || y-x == 1) {
			return true
		}
	}
	return false
}
