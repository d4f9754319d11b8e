namespace FarmTwin.Farm.Plants;

/// <summary>A raft lane: boards enter at one end, are pushed along, and leave at the other, strictly first in, first out.</summary>
/// <remarks>The exit is always the oldest board; one that is not taken blocks the lane. Mutable state of one season; all boards are
/// allocated when the lane is made.</remarks>
public sealed class RaftLane
{
    private readonly PlantLot[] _boards;
    private int _oldest;

    /// <summary>Makes an empty lane.</summary>
    /// <param name="capacityBoards">Boards it holds, at least 1.</param>
    /// <param name="holesPerBoard">Holes of a board, at least 1.</param>
    /// <param name="boardAreaSquareMetres">Area of a board, m².</param>
    public RaftLane(int capacityBoards, int holesPerBoard, double boardAreaSquareMetres)
    {
        ArgumentOutOfRangeException.ThrowIfNegativeOrZero(capacityBoards);
        ArgumentOutOfRangeException.ThrowIfNegativeOrZero(holesPerBoard);
        ArgumentOutOfRangeException.ThrowIfNegativeOrZero(boardAreaSquareMetres);
        HolesPerBoard = holesPerBoard;
        BoardAreaSquareMetres = boardAreaSquareMetres;
        _boards = new PlantLot[capacityBoards];
        for (int i = 0; i < capacityBoards; i++)
        {
            _boards[i] = new PlantLot();
        }
    }

    /// <summary>Holes of a board.</summary>
    public int HolesPerBoard { get; }

    /// <summary>Area of a board, m².</summary>
    public double BoardAreaSquareMetres { get; }

    /// <summary>Boards that stand in the lane.</summary>
    public int Count { get; private set; }

    /// <summary>Places at the entry for further boards.</summary>
    public int FreeBoards => _boards.Length - Count;

    /// <summary>Whether no board can enter before one has left.</summary>
    public bool IsFull => Count == _boards.Length;

    /// <summary>A board, counted from the exit: 0 is the oldest.</summary>
    /// <exception cref="ArgumentOutOfRangeException">There is no such board.</exception>
    public PlantLot this[int fromExit]
    {
        get
        {
            ArgumentOutOfRangeException.ThrowIfNegative(fromExit);
            ArgumentOutOfRangeException.ThrowIfGreaterThanOrEqual(fromExit, Count);
            return _boards[(_oldest + fromExit) % _boards.Length];
        }
    }

    /// <summary>Plants standing in the lane.</summary>
    public double Standing
    {
        get
        {
            double sum = 0;
            for (int i = 0; i < Count; i++)
            {
                sum += this[i].Plants;
            }

            return sum;
        }
    }

    /// <summary>Holes without a plant, on boards and where no board stands.</summary>
    public double EmptyHoles => Math.Max(0, ((double)_boards.Length * HolesPerBoard) - Standing);

    /// <summary>Pushes a board in at the entry; the plants leave the given lot for it.</summary>
    /// <param name="plants">The plants, no more than the board has holes.</param>
    /// <returns>False, and nothing changed, where the lane is full or there is no plant.</returns>
    /// <exception cref="ArgumentException">There are more plants than holes.</exception>
    public bool Push(PlantLot plants)
    {
        ArgumentNullException.ThrowIfNull(plants);
        if (plants.Plants > HolesPerBoard + PlantLot.NegligiblePlants)
        {
            throw new ArgumentException($"A board has {HolesPerBoard} holes; {plants.Plants} plants do not fit.", nameof(plants));
        }

        if (IsFull || plants.IsEmpty)
        {
            return false;
        }

        PlantLot board = _boards[(_oldest + Count) % _boards.Length];
        board.Clear();
        plants.MoveInto(board, plants.Plants);
        board.AreaSquareMetres = BoardAreaSquareMetres;
        Count++;
        return true;
    }

    /// <summary>Takes the oldest board out at the exit; its plants join the given lot.</summary>
    /// <param name="harvest">Where they go.</param>
    /// <returns>False where the lane is empty.</returns>
    public bool HarvestOldest(PlantLot harvest)
    {
        ArgumentNullException.ThrowIfNull(harvest);
        if (Count == 0)
        {
            return false;
        }

        PlantLot board = _boards[_oldest];
        board.MoveInto(harvest, board.Plants);
        board.Clear();
        _oldest = (_oldest + 1) % _boards.Length;
        Count--;
        return true;
    }

    /// <summary>Cuts the board at the exit and puts it back at the entry to grow again.</summary>
    /// <param name="harvest">Where the cut goes.</param>
    /// <param name="share">Share of the shoot that is taken, below 1.</param>
    /// <param name="day">Today.</param>
    /// <returns>False where the lane is empty.</returns>
    public bool CutOldest(PlantLot harvest, double share, double day)
    {
        ArgumentNullException.ThrowIfNull(harvest);
        if (Count == 0)
        {
            return false;
        }

        PlantLot board = _boards[_oldest];
        board.CutInto(harvest, share, day);
        int entry = (_oldest + Count) % _boards.Length;
        (_boards[_oldest], _boards[entry]) = (_boards[entry], board);
        _oldest = (_oldest + 1) % _boards.Length;
        return true;
    }

    /// <summary>Removes dead plants from a board with all they hold; the board keeps its area and its place.</summary>
    /// <param name="fromExit">Which board, from the exit.</param>
    /// <param name="plants">How many.</param>
    /// <param name="waste">Where they go.</param>
    /// <returns>How many were removed.</returns>
    public double Lose(int fromExit, double plants, PlantLot waste) => this[fromExit].MoveInto(waste, plants, keepArea: true);

    /// <summary>Takes boards without a plant off; the others move up.</summary>
    public void TakeOffEmpty()
    {
        int kept = 0;
        for (int i = 0; i < Count; i++)
        {
            if (!this[i].IsEmpty)
            {
                int to = (_oldest + kept++) % _boards.Length;
                int from = (_oldest + i) % _boards.Length;
                (_boards[to], _boards[from]) = (_boards[from], _boards[to]);
            }
        }

        Count = kept;
    }

    /// <summary>Age of the board at the exit, days from sowing; NaN where the lane is empty.</summary>
    public double ExitAgeDays(double day) => Count > 0 ? this[0].AgeDays(day) : double.NaN;

    /// <summary>Fresh mass of a shoot on the board at the exit, g; NaN where the lane is empty.</summary>
    public double ExitFreshGramsPerPlant(CropParameters crop) => Count > 0 ? this[0].FreshShootGramsPerPlant(crop) : double.NaN;

    /// <summary>Makes this lane equal to another of the same size; allocates nothing.</summary>
    /// <exception cref="ArgumentException">The sizes differ.</exception>
    public void CopyFrom(RaftLane other)
    {
        ArgumentNullException.ThrowIfNull(other);
        if (other._boards.Length != _boards.Length || other.HolesPerBoard != HolesPerBoard)
        {
            throw new ArgumentException("The two lanes differ in size.", nameof(other));
        }

        _oldest = other._oldest;
        Count = other.Count;
        for (int i = 0; i < _boards.Length; i++)
        {
            _boards[i].CopyFrom(other._boards[i]);
        }
    }

    /// <summary>An equal lane that shares nothing with this one.</summary>
    public RaftLane Clone()
    {
        var copy = new RaftLane(_boards.Length, HolesPerBoard, BoardAreaSquareMetres);
        copy.CopyFrom(this);
        return copy;
    }
}
