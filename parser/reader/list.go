package reader

import (
	"errors"
	"slices"
	"strings"

	"heft/parser"
	"heft/parser/lexicon"
	"heft/parser/places"
	"heft/parser/reading"
	"heft/parser/scan"
	"heft/parser/turning"
)

const (
	manyPieces = 12             // in one list
	manyCommas = 4 * manyPieces // in one list: tree, thickness, length and what follows
)

// readList reads pieces that are told behind a head, "whole tree: red oak limb
// 14 in 22 ft, red oak log 24 in 8 ft". Every piece must be whole by itself:
// else it is no list, and the numbers are asked about.
func (r *Reader) readList(rd *reading.Reading) (parser.Question, *parser.Ask, bool) {
	unwhole := func(p parser.Said[string]) bool { return !r.whole(p.Value) }
	if pieces, count := crossList(rd); pieces != nil && !slices.ContainsFunc(pieces, unwhole) {
		return listOf(rd, pieces, count), nil, true
	}
	if pieces, count := r.sharedLength(rd); pieces != nil && !slices.ContainsFunc(pieces, unwhole) {
		return listOf(rd, pieces, count), nil, true
	}
	if two := r.compared(rd); two != nil {
		q := listOf(rd, two, nil)
		q.Compares = true
		return q, nil, true
	}
	if each := r.eachWhole(rd); each != nil {
		q := listOf(rd, each, nil)
		q.Passed = rd.Passed // also what stands before the first, in its part
		return q, nil, true
	}
	text := strings.TrimLeft(rd.Text, " \t\r\n")
	head := strings.IndexAny(text, ":\n")
	at := len(rd.Text) - len(text) + head
	if head < 0 || !r.heads(rd.Text[:at], rd.In) {
		return parser.Question{}, nil, false
	}
	parts := r.listed(rd, at+1)
	if len(parts) > manyPieces {
		return parser.Question{Intent: parser.AskTree, Language: rd.Language}, &parser.Ask{Kind: parser.TooMuch, Words: rd.Text, End: len(rd.Text)}, true
	}
	if len(parts) < 2 || slices.ContainsFunc(parts, unwhole) {
		return parser.Question{}, nil, false
	}
	return listOf(rd, parts, nil), nil, true
}

// listOf asks of several pieces what each weighs, and all of them; counts are numbers that
// only tell how many they are.
func listOf(rd *reading.Reading, pieces, counts []parser.Said[string]) parser.Question {
	return parser.Question{Intent: parser.AskTree, Language: rd.Language, Units: turning.Units(rd), Pieces: pieces, TakesMost: places.MostWraps(rd), Passed: append(counts, turning.PassedOutside(rd, pieces)...)}
}

// part reads a part of a message in the tongue of all of it.
func (r *Reader) part(text string, in *scan.Tongue) *reading.Reading {
	tree, err := scan.Parse(text, in)
	if err != nil {
		return &reading.Reading{Text: text, In: in, Asks: []*parser.Ask{{Kind: parser.Nonsense}}}
	}
	return r.elements(text, in, tree, parser.Question{})
}

// heads says whether the words can only stand before a list of pieces, or ask
// for all of them.
func (r *Reader) heads(text string, in *scan.Tongue) bool {
	rd := r.part(text, in)
	list := false
	for i, e := range rd.Elems {
		if e.Fig != nil || e.Piece() || len(rd.TermAt(i).Roles) > 0 {
			return false
		}
		switch rd.TermAt(i).Intent {
		case "", parser.AskWeight:
		case parser.AskTree:
			list = true
		default:
			return false
		}
		list = list || e.Marked(lexicon.MarkList)
	}
	return list && len(rd.Asks) == 0
}

// listed divides the text from at on: by lines and semicolons, or else by
// commas, where what names no piece goes with the piece before it.
func (r *Reader) listed(rd *reading.Reading, at int) []parser.Said[string] {
	marks := "\n;"
	if !strings.ContainsAny(strings.TrimSpace(rd.Text[at:]), marks) {
		marks = ","
	}
	if strings.Count(rd.Text, ",") > manyCommas {
		return nil
	}
	var out []parser.Said[string]
	for start := at; start < len(rd.Text); {
		end := len(rd.Text)
		if n := strings.IndexAny(rd.Text[start:], marks); n >= 0 {
			end = start + n
		}
		if one := strings.TrimSpace(rd.Text[start:end]); one != "" {
			from := start + strings.Index(rd.Text[start:end], one)
			out = append(out, parser.Said[string]{Value: one, Words: one, Start: from, End: from + len(one)})
			if n := len(out); n > 1 && marks == "," && !(r.namesPiece(out[n-1].Value, rd.In) && r.namesPiece(out[n-2].Value, rd.In)) {
				from, to := out[n-2].Start, out[n-1].End
				both := rd.Text[from:to]
				out = append(out[:n-2], parser.Said[string]{Value: both, Words: both, Start: from, End: to})
			}
		}
		start = end + 1
	}
	return out
}

// namesPiece says whether the text names a tree or a shape.
func (r *Reader) namesPiece(text string, in *scan.Tongue) bool {
	return slices.ContainsFunc(r.part(text, in).Elems, func(e reading.Element) bool { return e.Piece() })
}

// whole says whether the text tells one piece and nothing else. Which of the
// trees that share a name may be asked.
func (r *Reader) whole(text string) bool {
	q, err := r.Read(text)
	return !q.FollowUp && wholePiece(q, err)
}

// wholePiece says whether a question is of one piece's weight, and all of it is told.
func wholePiece(q parser.Question, err error) bool {
	ask, asks := errors.AsType[*parser.Ask](err)
	if asks && ask.Kind != parser.WhichTree || q.Intent != parser.AskWeight || len(q.Pieces) > 0 {
		return false
	}
	missing := q.MissingPiece()
	return len(missing) == 0 || asks && slices.Equal(missing, []parser.Field{parser.SpeciesField})
}

// twoPieces says that the numbers without a place are the sizes of two pieces:
// asking about one of them would only bring up the next.
func twoPieces(rd *reading.Reading, asks []*parser.Ask) *parser.Ask {
	thick, long := 0, 0
	for _, a := range asks {
		for _, e := range rd.Elems {
			if a.Kind != parser.Loose || e.Fig == nil || e.Fig.Dim != parser.DimLength || e.Fig.Elsewhere || e.Start != a.Start {
				continue
			}
			if e.Fig.Unit.Fine {
				thick++
			} else {
				long++
			}
		}
	}
	if thick < 2 || long < 2 {
		return nil
	}
	return &parser.Ask{Kind: parser.TooMuch, Words: rd.Text, End: len(rd.Text)}
}

// crossList reads such a message as a list of pieces. Every number in it must be
// of a piece, or how many they are; nothing else may be asked or in doubt.
func crossList(rd *reading.Reading) (pieces, count []parser.Said[string]) {
	pairs := places.PairsOfSizes(rd)
	if len(pairs) < 2 || len(pairs) > manyPieces || len(rd.Asks) > 0 {
		return nil, nil
	}
	trees := places.TreesOf(rd, pairs)
	across, along := places.UnitsOf(rd, pairs)
	if trees == nil || across == nil || !places.AskedOf(rd, pairs) || !places.OnlyPieces(rd, pairs) {
		return nil, nil
	}
	limit, _ := places.HeldBehind(rd, pairs[len(pairs)-1].Along)
	past := 0 // the end of the pair before
	for k, p := range pairs {
		shape, many := places.ShapeOf(rd, past, p), places.ManyOf(rd, past, p, pairs)
		past = p.Along + 1
		a, b := rd.Elems[p.Across].Fig, rd.Elems[p.Along].Fig
		if !places.Lendable(a, across) || !places.Lendable(b, along) || many != "" && shape == "" {
			return nil, nil
		}
		if many != "" {
			shape += "s"
		}
		value := limit + strings.TrimSpace(many+" "+trees[k]+" "+shape+" "+places.As(a, across, rd)+" x "+places.As(b, along, rd))
		pieces = append(pieces, parser.Said[string]{Value: value, Words: rd.Text[a.Start:b.End], Start: a.Start, End: b.End})
	}
	return pieces, append(places.HowMany(rd, pairs), rd.Passed...)
}
