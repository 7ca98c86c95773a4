package drop_test

import "math"

const gravity = 9.80665 // m/s²

// fall integrates the fall of a mass onto a line, apart from the code under
// test: from the moment the line is tight, by the classic fourth-order
// Runge-Kutta rule, until the piece stops. The line pulls with k times its
// stretch, but never more than slips: there it runs. It returns the largest
// pull, how far the piece went and how far of that the line ran.
func fall(mass, drop, k, slips float64) (peak, stopped, ran float64) {
	type state struct{ x, v float64 }
	speed := math.Sqrt(2 * gravity * drop)
	rate := func(s state) state { return state{s.v, gravity - min(k*(s.x-ran), slips)/mass} }
	plus := func(s, d state, h float64) state { return state{s.x + h*d.x, s.v + h*d.v} }
	s := state{0, speed}
	h := math.Sqrt(mass/k) / 2000
	for {
		k1 := rate(s)
		k2 := rate(plus(s, k1, h/2))
		k3 := rate(plus(s, k2, h/2))
		k4 := rate(plus(s, k3, h))
		next := state{
			s.x + h/6*(k1.x+2*k2.x+2*k3.x+k4.x),
			s.v + h/6*(k1.v+2*k2.v+2*k3.v+k4.v),
		}
		if next.v < 0 {
			return peak, s.x, ran
		}
		s = next
		ran = max(ran, s.x-slips/k)
		peak = max(peak, k*(s.x-ran))
	}
}
