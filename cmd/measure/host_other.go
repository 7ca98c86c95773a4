//go:build !linux

package main

import (
	"errors"
	"os"
)

var errElsewhere = errors.New("only Linux tells what this compares: fdatasync, and a process's peak memory")

// host is the machine, and a folder to measure in.
type host struct{ machine, dir, disk string }

func thisHost() (host, error) { return host{}, errElsewhere }

func dataSync(*os.File) error { return errElsewhere }

func peakMemory(int) (float64, error) { return 0, errElsewhere }
