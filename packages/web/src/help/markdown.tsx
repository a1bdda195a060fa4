import { commonmarkLanguage } from '@codemirror/lang-markdown';
import { Fragment, type ReactNode } from 'react';

type Node = ReturnType<typeof commonmarkLanguage.parser.parse>['topNode'];

interface MarkdownProps {
  readonly text: string;
  /** Draws a fenced block; `info` is what stands after the fence. */
  readonly fence: (info: string, code: string) => ReactNode;
}

/** Our own pages, set from Markdown. Only what they use is known; anything else is shown as it is written. */
export function Markdown({ text, fence }: MarkdownProps) {
  return <>{blocks(commonmarkLanguage.parser.parse(text).topNode, text, fence)}</>;
}

function blocks(node: Node, text: string, fence: MarkdownProps['fence']): ReactNode[] {
  return childrenOf(node).map((child) => <Fragment key={child.from}>{block(child, text, fence)}</Fragment>);
}

function block(node: Node, text: string, fence: MarkdownProps['fence']): ReactNode {
  switch (node.name) {
    case 'ATXHeading1':
      return <h1>{inline(node, text)}</h1>;
    case 'ATXHeading2':
      return <h2>{inline(node, text)}</h2>;
    case 'Paragraph':
      return <p>{inline(node, text)}</p>;
    case 'BulletList':
      return <ul>{items(node, text, fence)}</ul>;
    case 'OrderedList':
      return <ol>{items(node, text, fence)}</ol>;
    case 'FencedCode': {
      const info = node.getChild('CodeInfo');
      const code = node.getChildren('CodeText').map(({ from, to }) => text.slice(from, to));
      return fence(info === null ? '' : text.slice(info.from, info.to), code.join(''));
    }
    case 'ListMark':
      return null;
    default:
      return <p>{text.slice(node.from, node.to)}</p>;
  }
}

function items(node: Node, text: string, fence: MarkdownProps['fence']): ReactNode[] {
  return node.getChildren('ListItem').map((item) => {
    const [only, ...more] = childrenOf(item).filter(({ name }) => name !== 'ListMark');
    // A plain item is a line, not a paragraph of its own.
    const isLine = only?.name === 'Paragraph' && more.length === 0;
    return <li key={item.from}>{isLine ? inline(only, text) : blocks(item, text, fence)}</li>;
  });
}

/** Words with their emphasis; marks are left out. */
function inline(node: Node, text: string): ReactNode[] {
  const parts: ReactNode[] = [];
  let at = node.from;
  for (const child of childrenOf(node)) {
    if (child.from > at) parts.push(text.slice(at, child.from));
    at = child.to;
    switch (child.name) {
      case 'Emphasis':
        parts.push(<em key={child.from}>{inline(child, text)}</em>);
        break;
      case 'StrongEmphasis':
        parts.push(<strong key={child.from}>{inline(child, text)}</strong>);
        break;
      case 'InlineCode':
        parts.push(<code key={child.from}>{inline(child, text)}</code>);
        break;
      case 'HeaderMark':
        // The space after the sign belongs to it.
        if (child.from === node.from) at += 1;
        break;
      case 'EmphasisMark':
      case 'CodeMark':
        break;
      default:
        parts.push(text.slice(child.from, child.to));
    }
  }
  if (node.to > at) parts.push(text.slice(at, node.to));
  return parts;
}

function childrenOf(node: Node): Node[] {
  const all: Node[] = [];
  for (let child = node.firstChild; child !== null; child = child.nextSibling) all.push(child);
  return all;
}
