import './host/strict-policy.ts';
import { createRoot } from 'react-dom/client';
import { App } from './app.tsx';
import './styles/tokens.css';
import './styles/base.css';
import './styles/frame.css';
import './styles/controls.css';
import './styles/overlays.css';
import './styles/parts.css';
import './styles/screens.css';

const root = document.getElementById('root');
if (root === null) throw new Error('index.html has no #root');
createRoot(root).render(<App />);
