package main

import (
	"errors"
	"os"
	"time"
)

// slateSize is about where the journal's log begins to be written over.
const slateSize = 4 << 20

// slate is a file that is written over again and again, as the journal's log
// is, each write on disk before the next: the least that a durable commit
// costs here.
type slate struct {
	file   *os.File
	block  []byte
	offset int64

	took      []time.Duration // by each write
	perSecond []float64       // in each turn
}

func newSlate(path string, blockSize int) (*slate, error) {
	f, err := os.OpenFile(path, os.O_CREATE|os.O_EXCL|os.O_RDWR, 0o600)
	if err != nil {
		return nil, err
	}
	blank := make([]byte, slateSize+blockSize)
	if _, err = f.Write(blank); err == nil {
		err = f.Sync()
	}
	if err != nil {
		return nil, errors.Join(err, f.Close())
	}
	return &slate{file: f, block: blank[:blockSize]}, nil
}

// write writes so many blocks.
func (s *slate) write(n int) error {
	turn := time.Now()
	for range n {
		s.block[0]++
		began := time.Now()
		if _, err := s.file.WriteAt(s.block, s.offset); err != nil {
			return err
		}
		if err := dataSync(s.file); err != nil {
			return err
		}
		s.took = append(s.took, time.Since(began))
		s.offset = (s.offset + int64(len(s.block))) % slateSize
	}
	s.perSecond = append(s.perSecond, float64(n)/time.Since(turn).Seconds())
	return nil
}

func (s *slate) close() error { return s.file.Close() }

// written is what a slate found.
type written struct {
	p50       time.Duration
	perSecond float64
}

func (s *slate) found() written {
	return written{p50: median(s.took), perSecond: median(s.perSecond)}
}
