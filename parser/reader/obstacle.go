package reader

import (
	"heft/parser"
	"heft/parser/gear"
	"heft/parser/lexicon"
	"heft/parser/places"
	"heft/parser/reading"
	"heft/parser/stops"
)

// standHigh asks about how high something stands that nothing is asked of, and that begins
// its sentence: "fence is 9 ft from the trunk, 6 ft high" tells of no hitch.
func standHigh(rd *reading.Reading) {
	for i := 1; i+1 < len(rd.Elems); i++ {
		fig := rd.Elems[i].Fig
		if !gear.Far(rd, i) || fig.Claimed != "" || fig.Told != "" || !rd.Cued(rd.At(i+1), lexicon.CueStandsHigh) {
			continue
		}
		first := i - 1
		for first > 0 && rd.At(first-1).Pause < 4 {
			first--
		}
		first = rd.Past(first, +1, lexicon.MarkArticle)
		laid := func(k int) bool {
			return k > first && k < i && (stops.Kit(rd, k) || rd.At(k).Plays(parser.HitchHeight))
		}
		if first < i-2 && gear.Obstacle(rd.At(first)) != "" && !rd.AnyAt(laid) {
			rd.Asks = append(rd.Asks, fig.Ask(parser.Loose, rd.Text))
			fig.Elsewhere = true
		}
	}
}

// obstacles claims the numbers of what a swing may strike.
func obstacles(rd *reading.Reading, before parser.Question) {
	if !gear.Swings(rd) && !gear.LeansOn(rd, before) {
		standHigh(rd)
		return
	}
	for i, e := range rd.Elems {
		kind := gear.Obstacle(e)
		if kind == "" {
			continue
		}
		told := gear.Told(rd, i)
		gear.Eliminate(rd, told, kind, i)
		if len(told) == 0 && !gear.VerbBefore(rd, i) || kind == parser.Standing && e.Piece() && !gear.Stands(rd, told) && !gear.VerbBefore(rd, i) {
			continue
		}
		gear.Settle(rd, told)
		rd.Struck = rd.Struck || gear.VerbBefore(rd, i)
		if rd.Obstacle == nil {
			rd.Obstacle = said(rd, e, kind)
		}
		if e.Term.Shape != "" { // the trunk that is swung past is no log
			t := *e.Term
			t.Shape, t.Roles = "", nil
			rd.Elems[i].Term = &t
		}
	}
	if rd.Obstacle == nil && before.Obstacle != nil {
		gear.Named(rd, before)
	} else if rd.Obstacle == nil {
		places.UnnamedPast(rd)
	}
}
