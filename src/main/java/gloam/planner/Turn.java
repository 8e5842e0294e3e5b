package gloam.planner;

/** The turn from directions among the stars to those over a site, known from where two of them are seen. */
record Turn(Axes from, Axes to) {

    private record Axes(Vector along, Vector across, Vector third) {

        static Axes of(Vector along, Vector beside) {
            Vector across = along.cross(beside).unit();
            return new Axes(along, across, along.cross(across));
        }
    }

    /** The turn that brings one pair of directions to another; those of a pair are neither equal nor opposite. */
    static Turn between(Vector star, Vector secondStar, Vector seen, Vector secondSeen) {
        return new Turn(Axes.of(star, secondStar), Axes.of(seen, secondSeen));
    }

    /**
     * A direction among the stars by what it has of the first direction of the pair, of the one at right angles to both,
     * and of the one at right angles to these: ahead, right and down when the second lies above the first.
     */
    Vector parts(Vector star) {
        return new Vector(star.dot(from.along), star.dot(from.across), star.dot(from.third));
    }

    /** Where a direction is seen that is given by its parts. */
    Vector seen(Vector parts) {
        return to.along.times(parts.x()).plus(to.across.times(parts.y())).plus(to.third.times(parts.z()));
    }
}
