package parser

import (
	"errors"
	"slices"
	"strings"
)

const (
	manyPieces = 12             // in one list
	manyCommas = 4 * manyPieces // in one list: tree, thickness, length and what follows
)

// readList reads pieces that are told behind a head, "whole tree: red oak limb
// 14 in 22 ft, red oak log 24 in 8 ft". Every piece must be whole by itself:
// else it is no list, and the numbers are asked about.
func (r *Reader) readList(rd *reading) (Question, *Ask, bool) {
	unwhole := func(p Said[string]) bool { return !r.whole(p.Value) }
	if pieces, count := rd.crossList(); pieces != nil && !slices.ContainsFunc(pieces, unwhole) {
		return Question{Intent: AskTree, Language: rd.language, Units: rd.units(), Pieces: pieces, Passed: append(count, rd.passedOutside(pieces)...)}, nil, true
	}
	if two := r.compared(rd); two != nil {
		return Question{Intent: AskTree, Language: rd.language, Units: rd.units(), Pieces: two, Compares: true, Passed: rd.passedOutside(two)}, nil, true
	}
	text := strings.TrimLeft(rd.text, " \t\r\n")
	head := strings.IndexAny(text, ":\n")
	at := len(rd.text) - len(text) + head
	if head < 0 || !r.heads(rd.text[:at], rd.in) {
		return Question{}, nil, false
	}
	parts := r.listed(rd, at+1)
	if len(parts) > manyPieces {
		return Question{Intent: AskTree, Language: rd.language}, &Ask{Kind: TooMuch, Words: rd.text, End: len(rd.text)}, true
	}
	if len(parts) < 2 || slices.ContainsFunc(parts, unwhole) {
		return Question{}, nil, false
	}
	return Question{Intent: AskTree, Language: rd.language, Units: rd.units(), Pieces: parts, Passed: rd.passedOutside(parts)}, nil, true
}

// part reads a part of a message in the tongue of all of it.
func (r *Reader) part(text string, in *tongue) *reading {
	tree, err := parse(text, in)
	if err != nil {
		return &reading{text: text, in: in, asks: []*Ask{{Kind: Nonsense}}}
	}
	return r.elements(text, in, tree, true)
}

// heads says whether the words can only stand before a list of pieces, or ask
// for all of them.
func (r *Reader) heads(text string, in *tongue) bool {
	rd := r.part(text, in)
	list := false
	for i, e := range rd.elems {
		if e.fig != nil || e.piece() || len(rd.termAt(i).roles) > 0 {
			return false
		}
		switch rd.termAt(i).intent {
		case "", AskWeight:
		case AskTree:
			list = true
		default:
			return false
		}
		list = list || e.marked(markList)
	}
	return list && len(rd.asks) == 0
}

// listed divides the text from at on: by lines and semicolons, or else by
// commas, where what names no piece goes with the piece before it.
func (r *Reader) listed(rd *reading, at int) []Said[string] {
	marks := "\n;"
	if !strings.ContainsAny(strings.TrimSpace(rd.text[at:]), marks) {
		marks = ","
	}
	if strings.Count(rd.text, ",") > manyCommas {
		return nil
	}
	var out []Said[string]
	for start := at; start < len(rd.text); {
		end := len(rd.text)
		if n := strings.IndexAny(rd.text[start:], marks); n >= 0 {
			end = start + n
		}
		if one := strings.TrimSpace(rd.text[start:end]); one != "" {
			from := start + strings.Index(rd.text[start:end], one)
			out = append(out, Said[string]{one, one, from, from + len(one)})
			if n := len(out); n > 1 && marks == "," && !(r.namesPiece(out[n-1].Value, rd.in) && r.namesPiece(out[n-2].Value, rd.in)) {
				from, to := out[n-2].Start, out[n-1].End
				both := rd.text[from:to]
				out = append(out[:n-2], Said[string]{both, both, from, to})
			}
		}
		start = end + 1
	}
	return out
}

// namesPiece says whether the text names a tree or a shape.
func (r *Reader) namesPiece(text string, in *tongue) bool {
	return slices.ContainsFunc(r.part(text, in).elems, func(e element) bool { return e.piece() })
}

// whole says whether the text tells one piece and nothing else. Which of the
// trees that share a name may be asked.
func (r *Reader) whole(text string) bool {
	q, err := r.Read(text)
	ask, asks := errors.AsType[*Ask](err)
	if asks && ask.Kind != WhichTree || q.Intent != AskWeight || q.FollowUp || len(q.Pieces) > 0 {
		return false
	}
	missing := q.MissingPiece()
	return len(missing) == 0 || asks && slices.Equal(missing, []Field{SpeciesField})
}

// twoPieces says that the numbers without a place are the sizes of two pieces:
// asking about one of them would only bring up the next.
func (rd *reading) twoPieces(asks []*Ask) *Ask {
	thick, long := 0, 0
	for _, a := range asks {
		for _, e := range rd.elems {
			if a.Kind != Loose || e.fig == nil || e.fig.dim != dimLength || e.fig.elsewhere || e.start != a.Start {
				continue
			}
			if e.fig.unit.fine {
				thick++
			} else {
				long++
			}
		}
	}
	if thick < 2 || long < 2 {
		return nil
	}
	return &Ask{Kind: TooMuch, Words: rd.text, End: len(rd.text)}
}
