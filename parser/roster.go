package parser

import (
	"slices"
	"strings"
)

// Crews tell who does what today: "Sam on the drum, me climbing, Josh on the tag
// line". Names are not kept. Such a message is the job's all the same, and what is
// not kept of it is said back, with what can be.

// The cues of such a message.
const (
	cueNoOne  cue = "no-one"  // in place of a name, that a post is empty
	cuePost   cue = "post"    // where somebody works, or as what
	cueRoster cue = "roster"  // what such a message begins with
	cueWhoIs  cue = "who-is"  // asks for a name
	cueAtPost cue = "at-post" // between a name and where they work
)

// mostNamed is how many words may stand beside each post: with more of them it
// is not understood.
const mostNamed = 3

// roster says whether a message tells who does what, and nothing else: in each of
// its parts stand names and one post.
func (rd *reading) roster() bool {
	if rd.queries() || rd.typed(cueNoOne) || strings.ContainsAny(rd.text, "?¿") || slices.ContainsFunc(rd.asks, func(a *Ask) bool { return a.Kind != Unknown }) {
		return false
	}
	led, posts := map[string]bool{}, 0
	for _, p := range strings.FieldsFunc(rd.text, func(r rune) bool { return strings.ContainsRune(",;.&\n", r) }) {
		told, beside := rd.posts(newPlainText(p).words, led)
		if beside > mostNamed*max(1, told) || told > 0 && beside == 0 {
			return false
		}
		posts += told
	}
	return posts > 0 && !rd.anyAt(func(i int) bool { return rd.noName(i, led) })
}

// noName says whether what stands at i is neither a name nor a post, nor leads to
// one: it could say how somebody fares, or tell of a piece.
func (rd *reading) noName(i int, led map[string]bool) bool {
	e := rd.elems[i]
	if e.fig != nil {
		return true
	}
	words := newPlainText(rd.text[e.start:e.end]).words
	named := e.term == nil || rd.termAt(i).someone || rd.termAt(i).chatter || rd.in.cues[cuePeople][strings.Join(words, " ")]
	return !named && slices.ContainsFunc(words, func(w string) bool { return !led[w] })
}

// posts counts the posts among some words, and the words beside them that may be
// names. It notes the words of the posts, and of what leads to them.
func (rd *reading) posts(words []string, led map[string]bool) (posts, beside int) {
	for i := 0; i < len(words); {
		n, post := rd.cueAt(words[i:])
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
func (rd *reading) cueAt(words []string) (n int, post bool) {
	for n := min(longestCue, len(words)); n >= 1; n-- {
		said := strings.Join(words[:n], " ")
		if rd.in.cues[cuePost][said] {
			return n, true
		}
		if rd.in.cues[cueAtPost][said] || rd.in.cues[cueRoster][said] {
			return n, false
		}
	}
	return 0, false
}

// asksWho says whether it is asked who has a post: "whos on the drum today".
func (rd *reading) asksWho() bool {
	return rd.typed(cueWhoIs) && rd.typed(cuePost) && !rd.anyAt(func(i int) bool { return rd.elems[i].fig != nil || rd.elems[i].piece() })
}

// notKept is a question of the job of which nothing can be kept.
func (rd *reading) notKept() Question {
	said := strings.TrimSpace(rd.text)
	return Question{Intent: AskJob, Language: rd.language, Units: rd.units(), Asks: true,
		Left: []Said[string]{{Value: said, Words: said, End: len(rd.text)}}}
}
