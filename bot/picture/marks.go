package picture

import "heft/bot"

// What it costs to set a label on something, in pixels that it would rather
// go away.
const (
	onHatch = 8.0
	onWood  = 25.0
	onLine  = 40.0
	onGear  = 150.0
	onForce = 400.0
)

// mark draws one mark.
func (v *view) mark(m bot.Mark) {
	p := v.all(m.Path)
	switch m.Kind {
	case bot.Ground:
		v.ground(p)
	case bot.Stem:
		v.add(shape{pts: p, closed: true, fill: bark, line: pen, width: thin, guard: onWood})
	case bot.Wood:
		v.add(shape{pts: p, closed: true, fill: timber, line: pen, width: medium, guard: onGear})
	case bot.Later:
		v.add(shape{pts: p, closed: true, line: ghost, width: thin, dash: dashed, guard: onLine})
	case bot.Break:
		v.gone(p)
	case bot.Obstacle:
		v.obstacle(p)
	case bot.Sling:
		v.add(shape{pts: p, line: ink, width: medium, guard: onLine})
	case bot.Rope:
		v.rope(p, max(1, m.Lines), nil)
	case bot.Lately:
		v.rope(p, max(1, m.Lines), dashed)
	case bot.Sweep:
		v.sweep(p)
	case bot.Block:
		v.block(p[0])
	case bot.Drum:
		v.drum(p[0])
	case bot.Balance:
		v.balance(p[0])
	case bot.Person:
		v.person(p)
	case bot.Window:
		v.window(p)
	case bot.Gap:
		v.gap(p)
	case bot.Cross:
		v.cross(p[0])
	case bot.Load:
		p = v.load(p, m.Share)
	}
	if m.Label != "" {
		v.want(m, p)
	}
}
