package reader

import (
	"heft/parser"
	"heft/parser/lexicon"
	"heft/parser/reading"
	"heft/parser/scan"
	"heft/parser/senses"
	"heft/parser/sizes"
	"heft/parser/turning"
)

// Some words turn only what stands right beside them: "barely 14 in", "both limbs",
// "twice the limb", "it's actually ash". Elsewhere they are talk: "the rope barely
// bends", "what does it actually weigh".

// unturned leaves out such words where nothing stands beside them that they turn.
func unturned(rd *reading.Reading) {
	for i := range rd.Elems {
		e := rd.At(i) // words that are left out make the row shorter
		if rd.TermAt(i).Ask != parser.Twist {
			continue
		}
		switch {
		case senses.EitherWords(rd, i), turning.BrushShare(rd, i), turning.PeopleShare(rd, i), turning.BothAnswers(rd, i), turning.ReckonedShare(rd, i), turning.GuessTimes(rd, i), turning.HalfLog(rd, i), turning.TimesRound(rd, i), turning.OwnSizes(rd, i), turning.PartInstead(rd, i):
		case sizes.FallsSoFar(rd, i):
			rd.Alter(i, func(t *scan.Term) { t.Ask = "" })
		case rd.Cued(e, lexicon.CueWrongWay):
			turning.LeansBack(rd, i)
		case rd.Cued(e, lexicon.CueDegree):
			turning.Degree(rd, i)
		case rd.Cued(e, lexicon.CueIndeed):
			turning.Indeed(rd, i)
		case rd.Cued(e, lexicon.CuePer) && turning.Who(rd, rd.Past(i+1, +1, lexicon.MarkArticle)):
			turning.LeaveOut(rd, i, rd.Past(i+1, +1, lexicon.MarkArticle)+1) // "per the office"
		case rd.Cued(e, lexicon.CuePer):
			turning.Per(rd, i)
		case rd.Cued(e, lexicon.CuePlus):
			turning.Plus(rd, i)
		case rd.Cued(e, lexicon.CueTwofold):
			turning.Twofold(rd, i)
		case rd.TermAt(i).Each:
			turning.EachOfAll(rd, i)
		case rd.TermAt(i).Turning == parser.TurnsCompared && rd.At(i+1).Plays(parser.Wraps):
			turning.LessWraps(rd, i)
		case rd.TermAt(i).Turning == parser.TurnsCompared && rd.Cued(e, lexicon.CueThickest): // see bounds.ThickWanted
		case rd.TermAt(i).Turning == parser.TurnsCompared && turning.NextSize(rd, i):
			turning.TellNextSize(rd, i)
			rd.Alter(i, func(t *scan.Term) { *t = scan.Term{} }) // what it says is told
		case rd.TermAt(i).Turning == parser.TurnsCompared && (turning.Wondered(rd) || turning.SizedGear(rd, i)):
			turning.LeaveOut(rd, i, i+1)
		case rd.TermAt(i).Turning == parser.TurnsCompared:
			turning.Lengthening(rd, i)
		case rd.Cued(e, lexicon.CueBunch):
			turning.Bunch(rd, i)
		case rd.TermAt(i).Turning == parser.TurnsSeveral:
			turning.Several(rd, i)
		}
	}
}
