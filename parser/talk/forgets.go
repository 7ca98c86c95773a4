package talk

import (
	"regexp"
	"slices"
	"strings"
	"unicode"

	"heft/parser"
	"heft/parser/lexicon"
	"heft/parser/reading"
)

// A job is not forgotten by a word that stands anywhere, but by a message that says so from
// its beginning: what is to be forgotten, perhaps whose it was, what is to stay, and why.

// forgetting is what is left to be read of such a message, and what was read.
type forgetting struct {
	words      *lexicon.ForgetsWhat
	text       string
	at         int
	all, job   bool // everything, and that it is the job's
	listed     bool // the gear or the list is told that something is taken off
	taken      bool // and that it is, was read
	goes, stay []parser.Field
	left       []parser.Said[string]
}

// Forgets reads a message that takes back something of what its job keeps; false where it
// says anything else besides.
func Forgets(words lexicon.ForgetWords, rd *reading.Reading) (parser.Question, bool) {
	f := &forgetting{text: rd.Text, listed: words.Listed.MatchString(rd.Text)}
	if !f.take(words.Begin) && !(f.listed && f.take(words.Takes)) {
		return parser.Question{}, false
	}
	f.words = words.Behind()
	hands, clears := f.words.Hands.MatchString(rd.Text), f.words.Clears.MatchString(rd.Text)
	whose := f.things(&f.goes) && (f.off() || f.whose())
	if !f.all && len(f.goes) == 0 || !f.rest(rd) || !whose && f.byHand(hands, clears) {
		return parser.Question{}, false
	}
	q := parser.Question{Intent: parser.AskJob, Language: rd.Language, Left: f.left}
	if q.Clear = f.all && len(f.stay) == 0; q.Clear {
		return q, true
	}
	for _, x := range everything {
		if (f.all || slices.Contains(f.goes, x)) && !slices.Contains(f.stay, x) {
			q.Drops = append(q.Drops, x)
		}
	}
	return q, len(q.Drops) > 0
}

// everything is what a job keeps that can be forgotten by itself: who confirms and where
// it is go with the whole job alone.
var everything = slices.Concat([]parser.Field{parser.SpeciesField, parser.HitchHeight, parser.Limit, parser.People, parser.PersonPull}, lexicon.GearFacts)

// AsksToForget says whether it is asked how something is forgotten, or whether it was.
func AsksToForget(words lexicon.ForgetWords, rd *reading.Reading) bool {
	return words.Asked.MatchString(rd.Text)
}

// is says whether a pattern matches what is left.
func (f *forgetting) is(p *regexp.Regexp) bool { return p.MatchString(f.text[f.at:]) }

// take goes past what a pattern matches; false where it matches nothing.
func (f *forgetting) take(p *regexp.Regexp) bool {
	m := p.FindStringIndex(f.text[f.at:])
	if m == nil {
		return false
	}
	f.at += m[1]
	return true
}

// byHand says whether what is forgotten may be done to what hangs and stands there: who
// clears the rope or the crew may do so by hand, and nobody a limit.
func (f *forgetting) byHand(hands, clears bool) bool {
	has := func(x parser.Field) bool { return slices.Contains(f.goes, x) }
	switch {
	case f.job, has(parser.Limit), slices.Contains(f.stay, parser.Limit):
		return false
	case clears:
		return !f.all && !has(parser.SpeciesField) && !has(parser.HitchHeight)
	}
	return hands
}

// whose reads whose it was: "from yesterday's job", "for the other tree".
func (f *forgetting) whose() bool {
	const most = 4
	if slices.Contains(f.goes, parser.Limit) && f.take(f.words.Number) {
		return true
	}
	was, when := f.at, false
	if !f.take(f.words.Whose) {
		return false
	}
	for n := 0; n < most && (n == 0 || !f.is(f.words.Why)) && !strings.ContainsAny(f.text[was:f.at], ",;.:!?"); n++ {
		when = f.is(f.words.When) || when
		if !f.take(oneWord) {
			break
		}
	}
	if !when {
		f.at = was
	}
	return when
}

// off reads "off the gear", with the size of what is taken off before it or none.
func (f *forgetting) off() bool {
	was, said := f.at, len(f.left)
	f.sizes()
	if !f.listed || !f.take(f.words.Off) {
		f.at, f.left = was, f.left[:said]
		return false
	}
	f.job, f.taken = true, true
	return true
}

// sizes goes past the size of what is taken off a list, "that 16 mm line off the gear", and
// says it back: whatever its size, the part is kept no more.
func (f *forgetting) sizes() {
	const most = 4
	start := f.at
	defer func() {
		if words := strings.TrimSpace(f.text[start:f.at]); words != "" {
			f.left = append(f.left, parser.Said[string]{Value: words, Words: words, Start: start, End: start + len(words)})
		}
	}()
	for n := 0; n < most && f.listed && !f.is(f.words.Off) && f.take(f.words.Size); n++ {
	}
}

// oneWord is a word with what stands behind it.
var oneWord = regexp.MustCompile(`^[\pL'’]+(?:[^\pL\pN]+|$)`)

// things reads what is forgotten, or stays, one behind the other.
func (f *forgetting) things(out *[]parser.Field) bool {
	found := false
	for !found || !f.listed || !f.is(f.words.Off) { // "of the gear" is no gear that goes too
		was, said := f.at, len(f.left)
		fields, ok := f.thing()
		if !ok && f.take(f.words.Between) {
			fields, ok = f.thing()
		}
		if !ok && !found {
			f.sizes()
			fields, ok = f.thing()
		}
		if !ok {
			f.at, f.left = was, f.left[:said]
			return found
		}
		*out, found = append(*out, fields...), true
	}
	return found
}

// thing reads one of them: the longest that matches.
func (f *forgetting) thing() (fields []parser.Field, ok bool) {
	most, all, job := 0, false, false
	if m := f.words.All.FindStringIndex(f.text[f.at:]); m != nil {
		most, all = m[1], true
	}
	if m := f.words.Job.FindStringIndex(f.text[f.at:]); m != nil && m[1] > most {
		most, all, job = m[1], true, true
	}
	for first, p := range f.words.Part {
		if m := p.FindStringIndex(f.text[f.at:]); m != nil && m[1] > most {
			most, all, job, fields = m[1], false, false, lexicon.ForgetParts[first]
		}
	}
	f.at += most
	f.all, f.job = f.all || all, f.job || job
	return fields, most > 0
}

// rest reads what stays, thanks, and why; false where there is more.
func (f *forgetting) rest(rd *reading.Reading) bool {
	for f.at < len(f.text) {
		switch {
		case f.taken && f.is(f.words.Polite) && f.is(f.words.Why) && f.why(rd): // "ya está en la bodega"
			return true
		case f.take(f.words.Polite), f.whose():
		case f.is(f.words.Spare):
			f.take(f.words.Spare)
			all := f.all
			if !f.things(&f.stay) || f.all != all || !all && slices.ContainsFunc(f.stay, func(x parser.Field) bool { return slices.Contains(f.goes, x) }) {
				return false
			}
			f.take(f.words.As)
		default:
			return f.why(rd)
		}
	}
	return true
}

// why leaves out why something is forgotten, where that tells nothing else.
func (f *forgetting) why(rd *reading.Reading) bool {
	from, said := f.at, strings.TrimRightFunc(f.text[f.at:], func(r rune) bool { return !unicode.IsLetter(r) })
	for at := strings.LastIndexByte(said, ' '); at > 0 && f.words.Polite.FindString(said[at+1:]) == said[at+1:]; at = strings.LastIndexByte(said, ' ') {
		said = strings.TrimRight(said[:at], " ,.;!")
	}
	if !f.is(f.words.Why) && !f.is(f.words.New) || f.words.Turns.MatchString(said) || strings.ContainsAny(said, "0123456789") {
		return false
	}
	tells := func(i int) bool {
		e := rd.Elems[i]
		return e.Start >= from && (e.Fig != nil || rd.TermAt(i).Tree != nil || slices.ContainsFunc(OfJob, e.Plays))
	}
	if rd.AnyAt(tells) {
		return false
	}
	f.left = append(f.left, parser.Said[string]{Value: said, Words: said, Start: from, End: from + len(said)})
	f.at = len(f.text)
	return true
}
