package talk

import (
	"slices"
	"strings"

	"heft/parser"
	"heft/parser/lexicon"
	"heft/parser/reading"
	"heft/parser/turning"
)

// mostNamed is how many words may stand beside each post: with more of them it
// is not understood.
const mostNamed = 3

// Roster says whether a message tells who does what, and nothing else: in each of
// its parts stand names and one post.
func Roster(rd *reading.Reading) bool {
	if Queries(rd) || Typed(rd, lexicon.CueNoOne) || strings.ContainsAny(rd.Text, "?¿") || slices.ContainsFunc(rd.Asks, func(a *parser.Ask) bool { return a.Kind != parser.Unknown }) {
		return false
	}
	led, posts := map[string]bool{}, 0
	for _, p := range strings.FieldsFunc(rd.Text, func(r rune) bool { return strings.ContainsRune(",;.&\n", r) }) {
		told, beside := postsIn(rd, newPlainText(p).Words, led)
		if beside > mostNamed*max(1, told) || told > 0 && beside == 0 {
			return false
		}
		posts += told
	}
	return posts > 0 && !rd.AnyAt(func(i int) bool { return noName(rd, i, led) })
}

// noName says whether what stands at i is neither a name nor a post, nor leads to
// one: it could say how somebody fares, or tell of a piece.
func noName(rd *reading.Reading, i int, led map[string]bool) bool {
	e := rd.Elems[i]
	if e.Fig != nil {
		return true
	}
	words := newPlainText(rd.Text[e.Start:e.End]).Words
	named := e.Term == nil || rd.TermAt(i).Someone || rd.TermAt(i).Chatter || rd.In.Cued(strings.Join(words, " "), lexicon.CuePeople)
	return !named && slices.ContainsFunc(words, func(w string) bool { return !led[w] })
}

// postsIn counts the posts among some words, and the words beside them that may be
// names. It notes the words of the posts, and of what leads to them.
func postsIn(rd *reading.Reading, words []string, led map[string]bool) (posts, beside int) {
	for i := 0; i < len(words); {
		n, post := cueAt(rd, words[i:])
		if post {
			posts++
		} else if n == 0 {
			beside++
		}
		for _, w := range words[i : i+n] {
			led[w] = true
		}
		i += max(1, n)
	}
	return posts, beside
}

// cueAt is how many of the first words are a post or lead to one.
func cueAt(rd *reading.Reading, words []string) (n int, post bool) {
	for n := min(reading.LongestCue, len(words)); n >= 1; n-- {
		said := strings.Join(words[:n], " ")
		if rd.In.Cued(said, lexicon.CuePost) {
			return n, true
		}
		if rd.In.Cued(said, lexicon.CueAtPost) || rd.In.Cued(said, lexicon.CueRoster) {
			return n, false
		}
	}
	return 0, false
}

// AsksWho says whether it is asked who has a post: "whos on the drum today".
func AsksWho(rd *reading.Reading) bool {
	return Typed(rd, lexicon.CueWhoIs) && Typed(rd, lexicon.CuePost) && !rd.AnyAt(func(i int) bool { return rd.Elems[i].Fig != nil || rd.Elems[i].Piece() })
}

// AsksJob says whether words ask for what is kept of the job by themselves: who has a post
// is asked besides then, and none of it.
func AsksJob(rd *reading.Reading) bool {
	return rd.AnyAt(func(i int) bool { return rd.TermAt(i).Intent == parser.AskJob })
}

// NotKept is a question of the job of which nothing can be kept.
func NotKept(rd *reading.Reading) parser.Question {
	said := strings.TrimSpace(rd.Text)
	return parser.Question{Intent: parser.AskJob, Language: rd.Language, Units: turning.Units(rd), Asks: true,
		Left: []parser.Said[string]{{Value: said, Words: said, End: len(rd.Text)}}}
}
