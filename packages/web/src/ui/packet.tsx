import { shapeOf, type PacketPicture } from './packet-shape.ts';

interface PacketProps {
  readonly picture: PacketPicture;
  /** What the picture says, for people who do not see it; empty where words beside it say the same. */
  readonly label: string;
}

/** A packet as a row (or ring) of marks, what is certain above in ink, what is needed below in pencil. */
export function Packet({ picture, label }: PacketProps) {
  const shape = shapeOf(picture);
  return (
    <svg
      className="packet"
      viewBox={`0 0 ${shape.width} ${shape.height}`}
      {...(label === '' ? { 'aria-hidden': true } : { role: 'img', 'aria-label': label })}
    >
      {shape.have.map((d, index) => (
        <path key={index} className="have" d={d} />
      ))}
      {shape.need.map((d, index) => (
        <path key={index} className="need" d={d} />
      ))}
      {shape.brackets.map((d, index) => (
        <path key={index} className="bracket" d={d} />
      ))}
      {picture.marks.map((mark, place) => (
        <circle
          key={place}
          className={`mark mark-${mark}`}
          cx={shape.marks[place]?.x}
          cy={shape.marks[place]?.y}
          r={shape.radius}
        />
      ))}
    </svg>
  );
}
