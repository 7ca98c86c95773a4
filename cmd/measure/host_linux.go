package main

import (
	"bufio"
	"errors"
	"fmt"
	"os"
	"runtime"
	"strconv"
	"strings"
	"syscall"
)

// tmpfs marks a file system in memory (statfs(2)).
const tmpfs = 0x01021994

// host is the machine, and a folder to measure in.
type host struct {
	machine string
	dir     string // empty, new, on the disk that holds the working folder
	disk    string // which that is
}

// thisHost looks for a folder for temporary files on the same disk as the
// working folder: another disk, or memory, would be another measure.
func thisHost() (host, error) {
	var here syscall.Stat_t
	if err := syscall.Stat(".", &here); err != nil {
		return host{}, err
	}
	cache, _ := os.UserCacheDir() // not everybody has one
	for _, dir := range []string{os.TempDir(), cache} {
		var there syscall.Stat_t
		var fs syscall.Statfs_t
		if syscall.Stat(dir, &there) != nil || there.Dev != here.Dev || syscall.Statfs(dir, &fs) != nil || fs.Type == tmpfs {
			continue
		}
		made, err := os.MkdirTemp(dir, "heft-measure-")
		return host{machine: machine(), dir: made, disk: disk(there.Dev)}, err
	}
	return host{}, errors.New("no folder for temporary files on the disk that holds this one: let TMPDIR name one")
}

// machine names the processor and how many of it there are.
func machine() string {
	model, _ := field("/proc/cpuinfo", "model name")
	if model == "" {
		model = "processor"
	}
	return fmt.Sprintf("%d × %s", runtime.NumCPU(), model)
}

// disk names the file system of a device and where it lies (proc(5),
// mountinfo: the third field is the device, the type and the source come
// after a dash).
func disk(dev uint64) string {
	number := fmt.Sprintf("%d:%d", dev>>8&0xfff, dev&0xff|dev>>12&0xfff00)
	mounts, _ := os.ReadFile("/proc/self/mountinfo")
	for line := range strings.Lines(string(mounts)) {
		before, after, _ := strings.Cut(line, " - ")
		if f, kind := strings.Fields(before), strings.Fields(after); len(f) > 2 && f[2] == number && len(kind) > 1 {
			return kind[0] + " (" + kind[1] + ")"
		}
	}
	return "device " + number
}

// dataSync puts a file's data on disk.
func dataSync(f *os.File) error { return syscall.Fdatasync(int(f.Fd())) }

// peakMemory is the most memory that a running process has had resident, in
// bytes, as the kernel counts it. What wait(2) reports would not do: it
// includes the process before its exec, a copy of this one.
func peakMemory(pid int) (float64, error) {
	path := fmt.Sprintf("/proc/%d/status", pid)
	text, err := field(path, "VmHWM")
	if err != nil {
		return 0, err
	}
	kB, err := strconv.ParseFloat(strings.TrimSuffix(text, " kB"), 64)
	if err != nil {
		return 0, fmt.Errorf("%s: %w", path, err)
	}
	return kB * 1024, nil
}

// field is what a file of /proc has behind a name and a colon.
func field(path, name string) (string, error) {
	f, err := os.Open(path)
	if err != nil {
		return "", err
	}
	defer func() { _ = f.Close() }()
	for s := bufio.NewScanner(f); s.Scan(); {
		if k, v, ok := strings.Cut(s.Text(), ":"); ok && strings.TrimSpace(k) == name {
			return strings.TrimSpace(v), nil
		}
	}
	return "", fmt.Errorf("%s has no %s", path, name)
}
