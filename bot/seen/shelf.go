package seen

import (
	"cmp"
	"maps"
	"slices"
	"sync"
	"time"

	"github.com/patrickmn/go-cache"
)

// shelf is a cache that never holds more than its room.
type shelf struct {
	cache *cache.Cache
	room  int
	mu    sync.Mutex // one caller clears at a time
}

func newShelf(keep time.Duration, room int) *shelf {
	// No goroutine cleans up behind our back: what has expired is out of
	// reach at once, and out of memory when room is needed.
	return &shelf{cache: cache.New(keep, 0), room: room}
}

// add puts a bare key on the shelf, unless it is there.
func (s *shelf) add(key string) bool {
	if s.cache.Add(key, nil, cache.DefaultExpiration) != nil {
		return false
	}
	s.clear()
	return true
}

func (s *shelf) put(key string, v any) {
	s.cache.SetDefault(key, v)
	s.clear()
}

func (s *shelf) get(key string) any {
	v, _ := s.cache.Get(key)
	return v
}

func (s *shelf) drop(key string) { s.cache.Delete(key) }

// clear makes room once the shelf is over-full. It takes a quarter at a time,
// so that the cost of sorting is spread over many additions.
func (s *shelf) clear() {
	if s.cache.ItemCount() <= s.room {
		return
	}
	s.mu.Lock()
	defer s.mu.Unlock()
	s.cache.DeleteExpired()
	over := s.cache.ItemCount() - s.room
	if over <= 0 {
		return
	}
	items := s.cache.Items()
	oldest := slices.SortedFunc(maps.Keys(items), func(a, b string) int {
		return cmp.Or(cmp.Compare(items[a].Expiration, items[b].Expiration), cmp.Compare(a, b))
	})
	for _, key := range oldest[:min(len(oldest), over+s.room/4)] {
		s.cache.Delete(key)
	}
}
