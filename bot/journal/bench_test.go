package journal

import (
	"context"
	"encoding/json"
	"fmt"
	"os"
	"path/filepath"
	"slices"
	"strings"
	"sync"
	"sync/atomic"
	"testing"
	"time"

	"heft/bot"
)

// typical is an entry of the length that answers have.
func typical(n int) bot.Entry {
	e := question(n)
	e.Reply = strings.Repeat("Plan on 640 kg, three wraps.\n", 24)
	text, err := json.Marshal(e.Reply)
	if err != nil {
		panic(err)
	}
	e.Result = json.RawMessage(`{"status":"answered","intent":"lower","understood":` + string(e.Question) +
		`,"weight":{"low_kg":455.5,"likely_kg":548.25,"high_kg":640.25},"lower":{"wraps":3,"wraps_min":2,"wraps_max":4}` +
		`,"needs":[],"problems":[],"cautions":["Confirm with the qualified arborist on site."],"text":` + string(text) + `}`)
	return e
}

// plainLog is the least that a durable entry can cost: one write and one
// fdatasync of the entry's own bytes on the same disk.
type plainLog struct {
	f     *os.File
	line  []byte
	times []time.Duration
}

func newPlainLog(b *testing.B, dir string) *plainLog {
	b.Helper()
	f, err := os.Create(filepath.Join(dir, "plain.log"))
	if err != nil {
		b.Fatal(err)
	}
	b.Cleanup(func() { _ = f.Close() })
	line, err := json.Marshal(typical(0))
	if err != nil {
		b.Fatal(err)
	}
	return &plainLog{f: f, line: line}
}

func (p *plainLog) write(b *testing.B) {
	b.Helper()
	start := time.Now()
	if _, err := p.f.Write(p.line); err != nil {
		b.Fatal(err)
	}
	if err := datasync(p.f); err != nil {
		b.Fatal(err)
	}
	p.times = append(p.times, time.Since(start))
}

func median(ds []time.Duration) float64 {
	slices.Sort(ds)
	return float64(ds[len(ds)/2])
}

// BenchmarkAppend times an append with n callers, in turns with plain writes,
// and reports the medians' ratio: what one caller waits (×sync), and how many
// entries reach the disk in the time of one plain write (rows/sync).
func BenchmarkAppend(b *testing.B) {
	const each = 20 // entries of a caller, and plain writes, in a round
	for _, callers := range []int{1, 64} {
		b.Run(fmt.Sprint(callers), func(b *testing.B) {
			dir := b.TempDir()
			j := mustOpen(b, filepath.Join(dir, "journal.db"))
			var commits, next atomic.Int64
			onCommit(b, j, func() { commits.Add(1) })
			plain := newPlainLog(b, dir)
			var rounds []time.Duration
			for b.Loop() {
				for range each {
					plain.write(b)
				}
				start := time.Now()
				var wg sync.WaitGroup
				for range callers {
					wg.Go(func() {
						for range each {
							if err := j.Append(context.Background(), typical(int(next.Add(1)))); err != nil {
								b.Error(err)
							}
						}
					})
				}
				wg.Wait()
				rounds = append(rounds, time.Since(start)/each)
			}
			wait, sync := median(rounds), median(plain.times)
			b.ReportMetric(wait/sync, "×sync")
			b.ReportMetric(float64(callers)*sync/wait, "rows/sync")
			b.ReportMetric(float64(next.Load())/float64(commits.Load()), "rows/commit")
		})
	}
}

// fill puts rows of earlier days behind noon, one every two seconds.
func fill(b *testing.B, path string, rows int) {
	b.Helper()
	if err := mustOpen(b, path).Close(); err != nil {
		b.Fatal(err)
	}
	conn := other(b, path)
	for _, text := range []string{
		`PRAGMA synchronous = OFF`, `PRAGMA cache_size = -200000`,
		fmt.Sprintf(`INSERT INTO question (workspace, event_id, asked, channel, thread, asker, words,
			status, intent, question, result, reply, plan_kg, calc, schema, failure)
		WITH RECURSIVE n(i) AS (SELECT %[1]d UNION ALL SELECT i - 1 FROM n WHERE i > 1)
		SELECT 'T-ridge', printf('Old%%09d', %[1]d - i), %[2]d - i * 2000000, 'C', 't', 'U', '12 in ash log 8 ft',
			'answered', 'weight', '{}', '{}', printf('%%0200d', i), 300, '3', 1, '' FROM n`, rows, noon.UnixMicro()),
		`PRAGMA wal_checkpoint(TRUNCATE)`,
	} {
		if _, err := conn.ExecContext(context.Background(), text); err != nil {
			b.Fatal(err)
		}
	}
}

// BenchmarkDay reads one day's 200 entries with many rows behind them, in
// turns with 10,000 behind them, and reports the medians' ratio.
func BenchmarkDay(b *testing.B) {
	const few = 10_000
	for _, behind := range []int{few, 1_000_000, 10_000_000} {
		b.Run(fmt.Sprint(behind), func(b *testing.B) {
			var journals [2]*Journal
			for i, rows := range []int{few, behind} {
				path := filepath.Join(b.TempDir(), fmt.Sprint(i), "journal.db")
				fill(b, path, rows)
				journals[i] = mustOpen(b, path)
				for n := range 200 {
					mustAppend(b, journals[i], typical(n))
				}
			}
			var times [2][]time.Duration
			for b.Loop() {
				for i, j := range journals {
					start := time.Now()
					es, err := j.Between(context.Background(), noon, noon.AddDate(0, 0, 1))
					if err != nil || len(es) != 200 {
						b.Fatalf("%d entries, error %v", len(es), err)
					}
					times[i] = append(times[i], time.Since(start))
				}
			}
			b.ReportMetric(median(times[1])/median(times[0]), "×few")
		})
	}
}
