package picture

import (
	"strings"

	"heft/bot"
)

// The picture, in pixels.
const (
	width  = 800.0
	height = 1000.0
	margin = 26.0
)

// sheet is a picture laid out: shapes, then texts, each in the order in which
// they are painted.
type sheet struct {
	faces  faces
	shapes []shape
	texts  []text
	labels []placed
}

// layout sets a scene out on a sheet.
func layout(s *bot.Scene) *sheet {
	out := &sheet{faces: faces{}}
	area := rect{pt{margin, out.head(s)}, pt{width - margin, out.foot(s)}}
	area.max.y = out.bar(s, area)
	out.view(s, area)
	return out
}

func fields(words string) []string { return strings.Fields(words) }

// write adds a line of words, and returns where the next line goes.
func (o *sheet) write(words string, at pt, size float64, bold bool, colour colour) pt {
	o.texts = append(o.texts, text{words, at, size, bold, colour})
	return at.plus(pt{0, size * 1.28})
}

// head sets the title, the first figure and the verdict on a dark band,
// and returns where the band ends.
func (o *sheet) head(s *bot.Scene) float64 {
	band := len(o.shapes)
	o.shapes = append(o.shapes, shape{})
	at := pt{margin, margin + plain}
	for _, line := range o.faces.wrap(s.Title, plain, false, width-2*margin, 2) {
		at = o.write(line, at, plain, false, chalk)
	}
	at.y += large - plain - 2
	room := width - 2*margin
	if s.Verdict != "" {
		room -= o.verdict(s, at, s.Plan == "") + margin
	}
	if s.Plan != "" {
		size := large
		for size > plain && o.faces.width(s.Plan, size, true) > room {
			size -= 2
		}
		o.write(s.Plan, at, size, true, chalk)
	}
	end := at.y + margin
	o.shapes[band] = shape{pts: corners(rect{pt{0, 0}, pt{width, end}}), closed: true, fill: ink}
	return end
}

// verdict sets the verdict in a box, dark on light where it is bad, and
// returns the box's width.
func (o *sheet) verdict(s *bot.Scene, at pt, alone bool) float64 {
	size := 40.0
	if alone {
		size = large
	}
	w := o.faces.width(s.Verdict, size, true)
	box := rect{pt{width - margin - w - 24, at.y - 0.92*size}, pt{width - margin, at.y + 0.3*size}}
	if alone {
		box.min.x, box.max.x = margin, margin+w+24
	}
	frame := shape{pts: corners(box), closed: true, fill: chalk, line: chalk, width: thin}
	colour := colour(ink)
	if s.Refused {
		colour = force
	}
	o.shapes = append(o.shapes, frame)
	o.write(s.Verdict, pt{box.min.x + 12, at.y}, size, true, colour)
	return box.width()
}

// foot sets the notes and the reminder at the foot, and returns where they
// begin.
func (o *sheet) foot(s *bot.Scene) float64 {
	reminder := o.faces.wrap(s.Reminder(), small, false, width-2*margin, 3)
	var notes []string
	for _, n := range s.Notes {
		notes = append(notes, o.faces.wrap(n, plain, true, width-2*margin, 2)...)
	}
	notes = notes[:min(len(notes), 4)]
	begin := height - margin - 1.28*(small*float64(len(reminder))+plain*float64(len(notes)))
	at := pt{margin, begin + plain*0.75}
	for _, line := range notes {
		at = o.write(line, at, plain, true, ink)
	}
	at.y += small - plain*0.75 + 6
	rule := at.y - small - 1
	o.shapes = append(o.shapes, shape{pts: []pt{{margin, rule}, {width - margin, rule}}, line: ink, width: 2})
	for _, line := range reminder {
		at = o.write(line, at.plus(pt{0, 2}), small, false, ink)
	}
	return begin - 14
}

func corners(r rect) []pt {
	return []pt{r.min, {r.max.x, r.min.y}, r.max, {r.min.x, r.max.y}}
}
