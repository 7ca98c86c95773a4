package swing_test

import "math"

// The motions are integrated here apart from the code under test, by the
// classic fourth-order Runge-Kutta rule.

const gravity = 9.80665 // m/s²

type state [4]float64 // angles from the vertical of line and rod, and their rates

func (s state) plus(k state, h float64) state {
	for i := range s {
		s[i] += h * k[i]
	}
	return s
}

// step moves on by h.
func step(s state, h float64, rates func(state) state) state {
	k1 := rates(s)
	k2 := rates(s.plus(k1, h/2))
	k3 := rates(s.plus(k2, h/2))
	k4 := rates(s.plus(k3, h))
	for i := range s {
		s[i] += h / 6 * (k1[i] + 2*k2[i] + 2*k3[i] + k4[i])
	}
	return s
}

// point is a mass of one kilogram on a line.
type point struct{ line float64 }

func (p point) rates(s state) state {
	return state{s[2], 0, -gravity / p.line * math.Sin(s[0]), 0}
}

func (p point) tension(s state) float64 {
	return gravity*math.Cos(s[0]) + p.line*s[2]*s[2]
}

// pass follows the point from rest until it turns on the other side.
func (p point) pass(start float64, each func(angle, tension, speed float64)) (end float64) {
	s := state{start}
	for i := 0; i == 0 || s[2] < 0; i++ {
		each(s[0], p.tension(s), p.line*s[2])
		s = step(s, 2e-4*math.Sqrt(p.line), p.rates)
	}
	return s[0]
}

// rod is a uniform rod of one kilogram, tied at its end to a line without
// mass.
type rod struct{ line, length float64 }

// rates solves Lagrange's equations of line and rod for the accelerations.
func (r rod) rates(s state) state {
	L, l := r.line, r.length
	sin, cos := math.Sincos(s[1] - s[0])
	a, b, c := L*L, L*l/2*cos, l*l/3
	x := L*l/2*sin*s[3]*s[3] - gravity*L*math.Sin(s[0])
	y := -L*l/2*sin*s[2]*s[2] - gravity*l/2*math.Sin(s[1])
	det := a*c - b*b
	return state{s[2], s[3], (x*c - b*y) / det, (a*y - b*x) / det}
}

// tension follows from the force along the line and the torque about the
// rod's middle.
func (r rod) tension(s state) float64 {
	sin, cos := math.Sincos(s[1] - s[0])
	inward := r.line*s[2]*s[2] + r.length/2*s[3]*s[3]*cos
	return (gravity*math.Cos(s[0]) + inward) / (1 + 3*sin*sin)
}

// pass follows the rod from rest for one pass: until its line turns back, or
// for most of the period of line and rod in one.
func (r rod) pass(line, rod float64) (peak, reach float64) {
	s := state{line, rod}
	const steps = 5000
	h := 0.8 * 2 * math.Pi * math.Sqrt((r.line+r.length)/gravity) / steps
	for i := range steps {
		peak = max(peak, r.tension(s))
		tie := -r.line * math.Sin(s[0])
		reach = max(reach, tie, tie-r.length*math.Sin(s[1]))
		s = step(s, h, r.rates)
		if i > steps/10 && s[2] > 0 {
			break
		}
	}
	return peak, reach
}

// stiff follows a rod in line with a stiff line to the bottom, as one
// compound pendulum, and returns the pull there.
func (r rod) stiff(start float64) float64 {
	d := r.line + r.length/2
	inertia := d*d + r.length*r.length/12
	s := state{start}
	for s[0] > 0 {
		before := s
		s = step(s, 1e-4, func(s state) state {
			return state{s[2], 0, -gravity * d / inertia * math.Sin(s[0]), 0}
		})
		if s[0] <= 0 {
			s = before
			break
		}
	}
	return gravity*math.Cos(s[0]) + d*s[2]*s[2]
}
