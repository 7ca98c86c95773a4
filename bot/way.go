package bot

import (
	"math"

	"heft/calc/redirect"
	"heft/parser"
)

// way is a direction in which a block is pulled.
type way int

// The ways.
const (
	nowhere way = iota
	intoTheBend
	downWay
	upWay
	downToward
	downAway
	upToward
	upAway
	levelToward
	levelAway
)

// directions words them, as seen by somebody at the drum.
var directions = map[way]string{
	nowhere: "nowhere", intoTheBend: "into the bend, halfway between its two legs",
	downWay: "straight down", upWay: "straight up",
	downToward: "down and toward the drum", downAway: "down and away from the drum",
	upToward: "up and toward the drum", upAway: "up and away from the drum",
	levelToward: "level, toward the drum", levelAway: "level, away from the drum",
}

// direction is which way a block is pulled. Only where the load's own leg is
// known does it follow from the turns.
func (p path) direction(i int) way {
	switch {
	case p.still[i].Force <= 0:
		return nowhere
	case p.plumb:
		return toTheDrum(p.still[i].Direction)
	case p.bends[i].name == parser.BaseBlock:
		return upToward
	}
	return intoTheBend
}

// toTheDrum sorts a direction by its height and its side.
func toTheDrum(d redirect.Direction) way {
	const level = 15
	toward := math.Abs(d.Toward.Degrees()) < 90
	pick := func(yes, no way) way {
		if toward {
			return yes
		}
		return no
	}
	switch down := d.FromDown.Degrees(); {
	case down < 2:
		return downWay
	case down > 178:
		return upWay
	case down < 90-level:
		return pick(downToward, downAway)
	case down > 90+level:
		return pick(upToward, upAway)
	}
	return pick(levelToward, levelAway)
}
