package reader

import (
	"heft/parser"
	"heft/parser/bounds"
	"heft/parser/heights"
	"heft/parser/lines"
	"heft/parser/reading"
	"heft/parser/sizes"
)

// sizedAs is the place that the words right beside the number at i give it, or
// the number that it is crossed with.
func sizedAs(rd *reading.Reading, i int) parser.Field {
	fields := bounds.RoleBeside(rd, i)
	if f := rd.Elems[i].Fig.Sure; parser.Thickness(f) {
		return f // "20 one end and 12 the other"
	}
	if f := heights.SwingPlace(rd, i); f != "" {
		return f
	}
	if f := heights.WallPlace(rd, i); f != "" {
		return f
	}
	if f := lines.RunPlace(rd, i); f == parser.HitchHeight || f == parser.DrumAway {
		return f
	} else if f == parser.RopeLength {
		return parser.LineOut // of a unit they have the same
	}
	if lines.ThinByNumber(rd, i) {
		return parser.RopeDiameter
	}
	if rd.At(i+1).LooksBack(parser.RopeLength) && heights.Swung(rd) {
		return parser.LineOut // "22 of rope"
	}
	switch {
	case rd.Crossed(i-2, i) && sizes.LongStem(rd.At(i-2).Fig) && !rd.Crossed(i, i+2):
		return parser.Diameter // "6 m x 50 límite 180"
	case rd.JoinedThick(i), sizes.TapersBare(rd, i):
		return parser.Diameter
	case rd.Crossed(i-2, i) && sizes.WideStem(rd.At(i-2).Fig) && !rd.Crossed(i, i+2):
		return parser.Length // "medio metro x 3"
	case rd.Crossed(i-2, i) && rd.At(i-2).Fig.Short() && !rd.Crossed(i, i+2) && len(fields) > 0 && fields[0] == parser.Weight:
		return parser.Length // "38 in x 3 weight"
	case fields != nil && !sizes.AnothersWords(rd, i):
		return fields[0]
	case rd.TermAt(rd.Back(i-1)).Hangs && rd.AnyAt(rd.Is(heights.ToTheSide)) && rd.SaidOut(i+1):
		return parser.LineOut // "3 m de lado, cuelga 10"
	case rd.Crossed(i, i+2) && (rd.At(i+2).Fig.Far() || sizes.InHundredths(rd, i+2)) && !rd.Crossed(i-2, i):
		if sizes.MaybeFeet(rd, i) {
			return ""
		}
		return parser.Diameter // "14 x 22 ft"
	case rd.Crossed(i-2, i) && (rd.At(i-2).Fig.Short() || sizes.InHundredths(rd, i)) && !rd.Crossed(i, i+2):
		return parser.Length // "34 cm x 1.8"
	case sizes.MassOfPiece(rd, i):
		return parser.Weight // "polea 50 kN para troncos de 400"
	case sizes.StretchOf(rd, i), sizes.CutFrom(rd, i), sizes.AnchorFrom(rd, i):
		return parser.Diameter // "6 pies de fresno de 20"
	case sizes.NamesOne(rd, i) && !rd.At(i-1).Cross && sizes.LengthTold(rd, i) && !rd.ThicknessBeside(rd.Elems[i].Fig):
		return parser.Diameter // "14 red oak limb 22 ft"
	}
	return ""
}
