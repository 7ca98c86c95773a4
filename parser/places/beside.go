package places

import (
	"strings"

	"heft/parser"
	"heft/parser/lexicon"
	"heft/parser/reading"
)

// SoftBefore says whether the words before the number at i say much else besides, and
// it has its own behind it: "he says 14 at the butt".
func SoftBefore(rd *reading.Reading, i int) bool {
	soft := false
	for _, r := range rd.TermAt(rd.WordsBefore(i)).Roles {
		if r.Side&lexicon.After != 0 && !r.Soft {
			return false
		}
		soft = soft || r.Side&lexicon.After != 0
	}
	own := rd.At(i + 1)
	return soft && (own.Plays(parser.ButtDiameter) || own.Plays(parser.TipDiameter) || own.Plays(parser.MidDiameter) || own.Plays(parser.Length)) && own.Looks(lexicon.Before)
}

// OfSize says whether the words at i go with the number before them: "de grueso".
func OfSize(rd *reading.Reading, i int) bool {
	return rd.At(i).Looks(lexicon.Before) && strings.HasPrefix(rd.Word(rd.At(i)), "de ")
}
