package parser

// tonsOfGear tells the asks about a "ton" that it is of gear: no "3 ton
// shackle" is a piece of three tons.
func (rd *reading) tonsOfGear(used map[int]bool) {
	for _, a := range rd.asks {
		if a.Kind != WhichTon {
			continue
		}
		right := 0 // the element behind the ton
		for right < len(rd.elems) && rd.elems[right].start < a.Start {
			right++
		}
		if f := rd.massBeside(right-1, right); f != "" {
			a.Fields = []Field{f}
			continue
		}
		s, at := rd.strengthBeside(right-1, right)
		p, _ := rd.partOf(right-1, right, used)
		switch {
		case s != "" && p == "":
			continue
		case s != "":
			rd.elems[at].spent = true
			a.Fields = []Field{p.field(s)}
		case rd.partBeside(right-1, right) != "":
			a.Fields = rd.partBeside(right-1, right).both()
		}
	}
}

// massBeside is the limit or the payload that a ton was told of, "" for
// neither: "limit 2 tons", "8 ton truck".
func (rd *reading) massBeside(left, right int) Field {
	for _, f := range []Field{Limit, Payload} {
		if rd.at(rd.past(left, -1, markIs)).plays(f) || rd.at(right).plays(f) {
			return f
		}
	}
	if rd.truck(right) {
		return Payload
	}
	return ""
}

// truck says whether an element is what the wood goes away on.
func (rd *reading) truck(i int) bool {
	e := rd.at(i)
	if e.term == nil {
		return false
	}
	switch fold(rd.text[e.start:e.end]) {
	case "truck", "trucks", "trailer", "trailers", "chip truck", "loads", "camion", "camiones", "troca", "camioneta", "remolque", "traila":
		return true
	}
	return false
}
